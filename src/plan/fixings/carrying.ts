import { secondPair } from '../../job/chapters/install.ts'
import { questionKey } from '../../things/field.ts'
import type { Sheet } from '../../things/material.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { Part, PartId } from '../../things/part.ts'
import { inMillimetres, type Length, longest, shortest } from '../../units/length.ts'
import type { Mass } from '../../units/mass.ts'
import type { BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { type Lift, liftingIndex } from './lifting.ts'

/** One heavy thing: a piece, a box or a sheet, and how many people it takes. */
export interface Load {
  /** Mark of the part or box; for a sheet its name. */
  readonly mark: string
  readonly what: 'part' | 'box' | 'sheet'
  readonly mass: number
  /** Mass against the recommended weight limit of the lift to saw, plinth or wall, alone. */
  readonly index: number
  /** The least it takes: two are too few where a lift aid is needed. */
  readonly people: 1 | 2
  readonly help: 'none' | 'second person' | 'lift aid'
  /** Why it is not for one, in words, and what to do where two are too few; empty for one. */
  readonly because: string
}

/** Loads too heavy even for two, or two people needed where nobody helps; one question for all of them. */
export const heavyLift = messageKind<{
  readonly what: string
  readonly because: string
  readonly loads: string
  readonly alone: string
}>({
  code: 'C10',
  weight: 'confirm',
  source:
    'Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, load constant 23 kg; the rest common practice, no source',
  says: ({ what, because, loads: heavy, alone }) => ({
    short: `${what}: ${because}.`,
    why: `One person lifts at most ${alone}, and less with the arms out or the body twisted. To be lifted: ${heavy}.`,
    todo: 'Have a second person or a lift aid there; have a sheet cut down where it is bought; make a large piece in parts joined where they stand.',
  }),
})

const CM = 10

const liftOf = ({ figures }: PlanContext): Lift => ({
  handsOut: inMillimetres(figures.length('lift.hands-out')) / CM,
  handsHeight: inMillimetres(figures.length('lift.hands-height')) / CM,
  travel: inMillimetres(figures.length('lift.travel')) / CM,
  twist: figures.number('lift.twist'),
  grip: 'poor',
  frequency: 1,
})

interface Thing {
  readonly mark: string
  readonly what: Load['what']
  readonly mass: number
  readonly long: Length
  readonly wide: Length
}

/** Everything that is lifted whole: pieces, boxes, sheets. */
export interface Carried {
  readonly parts: readonly Part[]
  readonly boxes: BoxPlan['boxes']
  readonly sheets: readonly { readonly material: Sheet; readonly mass: number }[]
  readonly masses: ReadonlyMap<PartId, Mass>
  readonly boxMasses: ReadonlyMap<string, Mass>
}

/** What each thing weighs and how many people it takes, heaviest first. */
export const loads = (context: PlanContext, carried: Carried): readonly Load[] =>
  thingsOf(carried)
    .map((thing) => loadOf(context, thing))
    .toSorted((a, b) => b.mass - a.mass)

function thingsOf({ parts, boxes, sheets, masses, boxMasses: ofBoxes }: Carried): readonly Thing[] {
  const pieces = parts.map(
    (part): Thing => ({
      mark: part.mark,
      what: 'part',
      mass: (masses.get(part.id) ?? 0) / part.quantity,
      long: longest(part.roughLength, part.roughWidth),
      wide: shortest(part.roughLength, part.roughWidth),
    }),
  )
  const whole = boxes.map(
    (box): Thing => ({
      mark: box.mark,
      what: 'box',
      mass: ofBoxes.get(box.mark) ?? 0,
      long: longest(box.height, box.width),
      wide: shortest(box.height, box.width),
    }),
  )
  const kinds = new Map(sheets.map((sheet) => [sheet.material.name, sheet]))
  const stacked = [...kinds.values()].map(
    ({ material, mass }): Thing => ({
      mark: `sheet of ${material.name}`,
      what: 'sheet',
      mass,
      long: material.sheetLength,
      wide: material.sheetWidth,
    }),
  )
  return [...pieces, ...whole, ...stacked]
}

/** What is done with a load that two people do not lift. */
const INSTEAD_OF_TWO: Readonly<Record<Load['what'], string>> = {
  box: 'a lift aid, a third person, or the box in parts, put together where it stands',
  part: 'a lift aid, a third person, or the piece in parts, joined where they stand',
  sheet: 'a lift aid, a third person, or the sheet cut down where it is bought',
}

function loadOf(context: PlanContext, { mark, what, mass, long, wide }: Thing): Load {
  const { figures, show } = context
  const index = liftingIndex({ mass, lift: liftOf(context) })
  const reasons = [
    ...(mass > figures.number('lift.alone')
      ? [`${show.mass(mass)}, over ${show.mass(figures.number('lift.alone'))}`]
      : []),
    ...(index > figures.number('lift.index-high') ? [`lifting index ${index.toFixed(1)} alone`] : []),
    ...(long > figures.length('carry.alone-long') ? [`${show.withUnit(long)} long`] : []),
    ...(wide > figures.length('carry.alone-wide') ? [`${show.withUnit(wide)} wide`] : []),
  ]
  const beyondTwo = mass > figures.number('lift.two')
  return {
    mark,
    what,
    mass,
    index,
    people: reasons.length > 0 ? 2 : 1,
    help: beyondTwo ? 'lift aid' : reasons.length > 0 ? 'second person' : 'none',
    because: [...reasons, ...(beyondTwo ? [`more than two people lift: ${INSTEAD_OF_TWO[what]}`] : [])].join(', '),
  }
}

/** The loads to be asked about: too heavy even for two, or for two where nobody helps. */
export function liftMessages(context: PlanContext, all: readonly Load[]): readonly Message[] {
  const { figures, settle, show } = context
  const alone = settle.asked(secondPair, undefined) === 'never'
  const most = figures.number('lift.two')
  const heavy = all
    .filter((load, at) => all.findIndex((other) => other.mark === load.mark) === at)
    .filter((load) => load.mass > most || (alone && load.people === 2))
    .toSorted((a, b) => b.mass - a.mass)
  const [heaviest] = heavy
  if (heaviest === undefined) return []
  const weighed = (load: Load) => `${load.mark} ${show.mass(load.mass)}`
  return [
    raise(
      heavyLift,
      { about: questionKey('job', secondPair), place: 'carrying' },
      {
        what: heavy.length === 1 ? weighed(heaviest) : `${heavy.length} loads, up to ${show.mass(heaviest.mass)}`,
        because: alone ? 'for two people, and nobody helps' : `more than two people lift (${show.mass(most)})`,
        loads: heavy.map(weighed).join(', '),
        alone: show.mass(figures.number('lift.alone')),
      },
    ),
  ]
}
