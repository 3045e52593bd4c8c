import { FRONTS } from '../kinds/front/list.ts'
import { REMOVALS, type RemovalId } from '../kinds/removal/list.ts'
import type { Front } from '../plan/fronts/front.ts'
import type { Plan } from '../plan/plan.ts'
import type { NamedBay } from '../things/place.ts'
import { counted } from './counted.ts'

/** What stands in one bay, in words for the quote. */
export interface ScopeLine {
  readonly place: string
  readonly says: string
}

/** What the client gets, bay by bay, then the paint and the joints. */
export function scopeOf(plan: Plan): readonly ScopeLine[] {
  const bays = plan.bays.flatMap((bay) => {
    const things = [
      ...boxWords(plan, bay),
      ...counterWords(plan, bay),
      ...shelfWords(plan, bay),
      ...breastWords(plan, bay),
    ]
    return things.length === 0 ? [] : [{ place: capital(bay.name), says: `${listed(things)}.` }]
  })
  return [...removalWords(plan), ...bays, ...lightWords(plan), ...finishWords(plan)]
}

function boxWords(plan: Plan, bay: NamedBay): readonly string[] {
  const boxes = plan.boxes.boxes.filter((b) => b.run.bay.id === bay.id)
  if (boxes.length === 0) return []
  const { leaves, drawers, style } = plan.fronts
  const here = (fronts: readonly Front[]) => fronts.filter((front) => front.box.run.bay.id === bay.id).length
  const fronts = [
    ...(here(leaves) === 0 || style === 'none' ? [] : [counted(here(leaves), FRONTS[style].door)]),
    ...(here(drawers) === 0 ? [] : [counted(here(drawers), 'drawer')]),
  ]
  return [`${counted(boxes.length, 'cabinet')} ${fronts.length === 0 ? 'open' : `with ${listed(fronts)}`}`]
}

function counterWords(plan: Plan, bay: NamedBay): readonly string[] {
  const top = plan.tops.counterTop.get(bay.id)
  const hasCounter = plan.parts.some((p) => p.bay === bay.id && p.name.includes('counter'))
  return top === undefined || !hasCounter ? [] : [`a counter ${plan.show.withUnit(top)} high`]
}

function shelfWords(plan: Plan, bay: NamedBay): readonly string[] {
  const shelves = plan.shelves.shelves.filter((s) => s.bay.id === bay.id)
  return shelves.length === 0 ? [] : [counted(shelves.length, 'floating shelf', 'floating shelves')]
}

function breastWords(plan: Plan, bay: NamedBay): readonly string[] {
  const breast = plan.mantel.breasts.find((b) => b.bay.id === bay.id)
  if (breast === undefined) return []
  const { mantel } = breast
  const { withUnit } = plan.show
  return [
    ...(mantel === undefined
      ? []
      : [
          `a painted mantel ${withUnit(mantel.length)} long${mantel.legs === undefined ? '' : ' on two legs'}, its top at ${withUnit(mantel.top)}`,
        ]),
    ...(breast.paintedFace > 0 ? ['the old masonry face painted'] : []),
  ]
}

/** What comes off first, and that it is taken away: the trim with its length left to the papers of the work. */
function removalWords({ stripOut, bays }: Plan): readonly ScopeLine[] {
  const pieces = bays.flatMap((bay) => {
    const here = stripOut.pieces.filter((piece) => piece.bay.id === bay.id)
    return here.map(({ row, quantity }) => `${oldThing(row.what, quantity)} (${bay.name})`)
  })
  const trim = stripOut.trim.says.length > 0 ? ['old trim where the new work stands'] : []
  const off = [...pieces, ...trim]
  return off.length === 0
    ? []
    : [{ place: 'First', says: `${capital(listed(off))} taken off and taken away, the wall behind made good.` }]
}

function oldThing(what: RemovalId, quantity: number): string {
  const { says, unit } = REMOVALS[what]
  return unit === 'piece' && quantity > 1
    ? counted(quantity, `old ${says}`, `old ${says.replace(/f$/, 've')}s`)
    : `the old ${says}`
}

function lightWords({ lights }: Plan): readonly ScopeLine[] {
  const count = lights.lights.length
  if (count === 0) return []
  const low = `${counted(count, 'strip light')}, low voltage, with ${counted(
    lights.drivers.reduce((n, d) => n + d.count, 0),
    'driver',
  )} that stay within reach`
  return [
    {
      place: 'Lights',
      says: `${capital(low)}. The mains point for them is the electrician’s, and is not in this price.`,
    },
  ]
}

function finishWords(plan: Plan): readonly ScopeLine[] {
  const colour = plan.coating.colours['built-in']
  const joints = plan.joints.joints.length
  return [
    ...(plan.parts.length === 0
      ? []
      : [
          {
            place: 'Paint',
            says: colour === '' ? 'Built-ins painted, colour to be agreed.' : `Built-ins in ${colour}.`,
          },
        ]),
    ...(joints === 0
      ? []
      : [{ place: 'Joints', says: `${counted(joints, 'joint')} with the old walls closed and painted.` }]),
  ]
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** `a`, `a and b`, `a, b and c`. */
const listed = (things: readonly string[]): string =>
  things.length < 2 ? things.join('') : `${things.slice(0, -1).join(', ')} and ${things[things.length - 1] ?? ''}`
