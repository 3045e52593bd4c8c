import { REMOVALS } from '../../kinds/removal/list.ts'
import type { OldPiece } from '../strip-out/old-piece.ts'
import { CAUTIONS } from './cautions.ts'
import type { TaskDraft } from './draft.ts'
import { type Effort, effort } from './efforts.ts'
import { BOOKINGS } from './office.ts'
import type { Workload } from './workload.ts'

/** Old work made safe, taken off, and carried away, before the wall is repaired. */
export const removalTasks = (load: Workload): readonly TaskDraft[] => [
  madeSafe(load),
  takingOff(load),
  takingOffTogether(load),
  trimOff(load),
  wasteOut(load),
]

const site = { place: 'site', work: 'house' } as const

/** The lead-safe list, printed where the room is set up; nothing where no old paint is disturbed. */
export function leadSafe({ built }: Workload): readonly string[] {
  const { paint } = built.stripOut
  if (!paint.mayHoldLead || !paint.disturbs) return []
  return [...(paint.firm === undefined ? [] : [`Lead-safe work by ${paint.firm}.`]), ...LEAD_SAFE]
}

/** Work practices of 40 CFR 745.85 in the words of the trade (from memory); local rules may ask for more. */
const LEAD_SAFE = [
  'Lead-safe: signs at the door, nobody else in the room, children and pregnant women out of it.',
  'Lead-safe: everything out or under sheeting; floor sheeted 6 ft beyond the work, doors and vents sealed.',
  'Lead-safe: mist and score before prying; no dry sanding, no torch, no heat gun over 1100 °F, no machine without HEPA vacuum.',
  'Lead-safe: waste wrapped and sealed before it leaves the sheeting.',
  'Lead-safe: sheeting misted, folded inwards; HEPA vacuum from the top down, wet wipe, cleaning verified and written down before the sheeting is gone.',
] as const

function madeSafe(load: Workload): TaskDraft {
  const { trades } = load.built.stripOut
  const booked = [...new Set(trades.map((t) => t.trade))]
  return {
    ...site,
    id: 'R1',
    title: `Old work made safe by the ${booked.join(' and the ')}`,
    after: ['B1', 'A7', ...booked.map((trade) => BOOKINGS[trade])],
    needed: trades.length > 0,
    setOut: trades.map((t) => `${t.says}.`),
    checks: ['Dead or capped, tested before your hand is on it, in writing.'],
    cautions: [CAUTIONS.power, CAUTIONS.trade],
  }
}

const takingOff = (load: Workload): TaskDraft => ({
  ...removal(
    load,
    load.built.stripOut.pieces.filter((p) => p.help === 'none'),
  ),
  id: 'R2',
  title: 'Take the old pieces off',
  after: ['B1', 'A7', 'R1'],
})

const takingOffTogether = (load: Workload): TaskDraft => {
  const heavy = load.built.stripOut.pieces.filter((p) => p.help !== 'none')
  return {
    ...removal(load, heavy),
    id: 'R3',
    title: 'Take the heavy old pieces off',
    after: ['B1', 'A7', 'R1', 'R2'],
    lifts: heavy.map((p) => liftWords(load, p)),
  }
}

function liftWords({ show }: Workload, piece: OldPiece): string {
  const what = `the old ${REMOVALS[piece.row.what].says} (${piece.bay.name}), ${show.mass(piece.mass)}`
  return piece.help === 'lift aid'
    ? `Two people are too few for ${what}: take it apart on the wall, or use a lift aid.`
    : `Two people lift ${what}.`
}

function removal(load: Workload, pieces: readonly OldPiece[]): Omit<TaskDraft, 'id' | 'title' | 'after'> {
  const { paint } = load.built.stripOut
  return {
    ...site,
    needed: pieces.length > 0,
    efforts: effortsOf(pieces),
    tools: ['flat bar', 'oscillating saw', 'driver', 'knife', 'props', 'vacuum'],
    setOut: pieces.map((p) => p.says),
    checks: [
      'Paint and caulk lines scored, screws out, then pried against a board; it comes down into two hands.',
      'What is found behind it is photographed: wires, pipes, gaps to the flue.',
    ],
    cautions: [
      ...(paint.mayHoldLead ? [CAUTIONS.lead] : []),
      ...(paint.mayHoldAsbestos ? [CAUTIONS.asbestos] : []),
      CAUTIONS.sandDust,
      CAUTIONS.cables,
      ...(pieces.some((p) => p.row.holds !== 'nothing') ? [CAUTIONS.power] : []),
      ...(pieces.some((p) => p.row.fixing === 'mortar') ? [CAUTIONS.masonryDust] : []),
    ],
  }
}

/** The work of the pieces, summed by their hour rates. */
const effortsOf = (pieces: readonly OldPiece[]): readonly Effort[] =>
  [...new Set(pieces.map((p) => REMOVALS[p.row.what].rate))].map((rate) =>
    effort(
      rate,
      pieces.filter((p) => REMOVALS[p.row.what].rate === rate).reduce((n, p) => n + p.effort, 0),
    ),
  )

function trimOff(load: Workload): TaskDraft {
  const { trim, paint } = load.built.stripOut
  return {
    ...site,
    id: 'B2',
    title: 'Cut and take off old trim',
    after: ['B1', 'A7', 'R3'],
    needed: trim.metres > 0,
    efforts: [effort('trim-cut', trim.cuts), effort('trim-strip', trim.metres)],
    tools: ['oscillating saw', 'flat bar', 'knife', 'vacuum'],
    setOut: trim.says,
    checks: ['Paint line scored first, plaster whole behind what stays.'],
    cautions: [...(paint.mayHoldLead ? [CAUTIONS.lead] : []), CAUTIONS.sandDust, CAUTIONS.cables],
  }
}

function wasteOut(load: Workload): TaskDraft {
  const { waste, paint } = load.built.stripOut
  const { show } = load
  const held = waste.skips > 0 ? `${waste.skips} skip${waste.skips === 1 ? '' : 's'}` : `${waste.bags} bags`
  return {
    ...site,
    id: 'R4',
    title: 'Bag the waste and take it out',
    after: ['R3', 'B2'],
    needed: waste.bags > 0,
    efforts: [effort('waste-bag', waste.bags)],
    tools: ['rubble bags', 'shovel', 'vacuum', 'floor board or felt'],
    setOut: [`About ${show.volume(waste.volume)} loose, ${show.mass(waste.mass)}: ${held}.`],
    checks: ['Nails out or bent over; sharp ends inside; nobody lifts a bag above the knee alone when it is full.'],
    cautions: [
      ...(paint.mayHoldLead ? ['Wrapped and sealed as lead waste is handled here: ask the tip first.'] : []),
      ...(paint.mayHoldAsbestos ? [CAUTIONS.asbestos] : []),
    ],
  }
}
