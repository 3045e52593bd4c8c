import { cableTo } from '../../job/chapters/firebox.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { CutOut, Part } from '../../things/part.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, less, longest, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { parseMark } from '../marks.ts'
import type { Survey, Wall } from '../survey/survey.ts'
import type { MantelPlan } from './mantel.ts'

export const noBoxForCable = messageKind<{ side: string }>({
  code: 'C8',
  weight: 'confirm',
  source: 'common practice, no source',
  says: (v) => ({
    short: `No box with a counter over it stands at the ${v.side} of the breast to take the cable.`,
    why: 'The cable comes down to a counter, and through it and the box top under it.',
    todo: 'End the cable at a point on the breast, or lead it to the other side.',
  }),
})

/** The parts with the holes that let a screen's cable into a box beside the breast; and where there is no such box. */
export function withCableHoles(
  context: PlanContext,
  { survey, mantel, parts }: { readonly survey: Survey; readonly mantel: MantelPlan; readonly parts: readonly Part[] },
): { readonly parts: readonly Part[]; readonly messages: readonly Message[] } {
  const ways = mantel.breasts.flatMap(({ bay, cable, screen }) => {
    if (screen === undefined || cable.to === 'breast') return []
    const at = survey.walls.findIndex((wall) => wall.bay.id === bay.id)
    const beside = survey.walls[cable.to === 'left' ? at - 1 : at + 1]
    const place = holeAt(context, parts, beside, cable.to)
    return [{ bay, side: cable.to, place }]
  })
  const places = ways.flatMap(({ place }) => (place === undefined ? [] : [place]))
  return {
    parts: parts.map((part) => places.reduce((holed, place) => withHole(context, holed, place), part)),
    messages: ways.flatMap(({ bay, side, place }) => (place === undefined ? [noBox(bay, side)] : [])),
  }
}

/** Where the cable goes down: its hole's left and rear edges in the wall's axes, and the panels it passes. */
interface HoleAt {
  readonly x: Length
  readonly y: Length
  readonly through: ReadonlySet<Part['id']>
}

/** Beside the breast, in the end box: clear of its side, and in front of back, nailers and rails, with wood all round. */
function holeAt(
  { figures, cut }: PlanContext,
  parts: readonly Part[],
  beside: Wall | undefined,
  side: 'left' | 'right',
): HoleAt | undefined {
  if (beside === undefined || beside.kind === 'breast') return undefined
  const own = parts.filter((part) => part.bay === beside.bay.id)
  const box = endBox(own, side)
  const counters = own.filter(isCounter)
  const wall = box.find((part) => part.id.endsWith(side === 'left' ? '/side-right' : '/side-left'))
  if (wall === undefined || counters.length === 0) return undefined
  const hole = figures.length('cable.hole')
  const edge = figures.length('cable.edge')
  const { x, dx } = wall.placement
  const left = side === 'left' ? cut.down(less(x, edge, hole)) : cut.up(sum(x, dx, edge))
  const rear = longest(ZERO, ...box.filter(isAtBack).map(({ placement }) => sum(placement.y, placement.dy)))
  const at = { x: left, y: cut.up(sum(rear, edge)) }
  const passed = [...counters, ...box.filter(({ id }) => id.endsWith('/top'))].filter((part) =>
    holds(part, { ...at, hole, edge }),
  )
  return passed.some(isCounter) ? { ...at, through: new Set(passed.map(({ id }) => id)) } : undefined
}

const isCounter = (part: Part): boolean => {
  const mark = parseMark(part.mark)
  return mark?.role === 'T' && mark.box === undefined
}

/** The parts of the box next to the breast. */
function endBox(own: readonly Part[], side: 'left' | 'right'): readonly Part[] {
  const numbers = own.flatMap((part) => parseMark(part.mark)?.box ?? [])
  if (numbers.length === 0) return []
  const number = side === 'left' ? Math.max(...numbers) : Math.min(...numbers)
  return own.filter((part) => parseMark(part.mark)?.box === number)
}

/** What stands at the back under the top: the back, nailers, the rear rail. */
const isAtBack = ({ id, mark }: Part): boolean => {
  const role = parseMark(mark)?.role
  return role === 'K' || role === 'N' || id.endsWith('/rail-rear')
}

interface Hole {
  readonly x: Length
  readonly y: Length
  readonly hole: Length
  readonly edge: Length
}

/** Whether a lying panel takes the hole with its wood all round. */
const holds = ({ placement: p }: Part, { x, y, hole, edge }: Hole): boolean =>
  x >= sum(p.x, edge) && sum(x, hole, edge) <= sum(p.x, p.dx) && y >= p.y && sum(y, hole, edge) <= sum(p.y, p.dy)

function withHole({ figures, cut }: PlanContext, part: Part, { x, y, through }: HoleAt): Part {
  if (!through.has(part.id)) return part
  const hole = figures.length('cable.hole')
  const cutOut: CutOut = {
    what: 'round cable hole, from the back edge',
    x: cut.near(less(x, part.placement.x)),
    z: cut.near(less(y, part.placement.y)),
    width: hole,
    height: hole,
  }
  return { ...part, cutOuts: [...part.cutOuts, cutOut] }
}

function noBox(bay: NamedBay, side: 'left' | 'right'): Message {
  const about = questionKey(bay.id, cableTo)
  const fixes = [{ says: 'a point on the breast', answers: [{ key: about, value: 'breast' }] }]
  return raise(noBoxForCable, { about, place: bay.name, fixes }, { side })
}
