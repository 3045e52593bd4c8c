import { CAUTIONS } from './cautions.ts'
import { coatSteps } from './coat-steps.ts'
import { absent, capital, type TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import { BOOKINGS, ORDERS } from './office.ts'
import { leadSafe, removalTasks } from './removal.ts'
import type { Workload } from './workload.ts'

/** Dusty and wet work in the house, before any wood comes in. */
export const houseTasks = (load: Workload): readonly TaskDraft[] => [
  protection(load),
  ...removalTasks(load),
  tradeVisits(load),
  repairing(load),
  washing(load),
  ...masonryCoats(load),
  wallsFirst(load),
]

const site = { place: 'site', work: 'house' } as const

const protection = (load: Workload): TaskDraft => ({
  ...site,
  id: 'B1',
  title: 'Protect the floor and hearth, hang dust screens',
  // The room is not opened before the work is glued up: the client lives in it.
  after: ['A2', 'W3', 'W5', 'W6'],
  needed: load.built.parts.length > 0 || maskedFace(load) > 0 || load.built.stripOut.pieces.length > 0,
  efforts: [effort('protect', 1), ...(leadSafe(load).length > 0 ? [effort('lead-safe', 1)] : [])],
  tools: ['floor board or felt', 'sheeting', 'tape for floors', 'vacuum'],
  setOut: [
    ...(load.built.mantel.breasts.some((b) => b.opening !== undefined)
      ? [`Hearth covered ${load.show.withUnit(load.context.figures.length('mask.hearth-beyond'))} beyond the work.`]
      : []),
    ...load.built.mantel.breasts.flatMap((b) => b.masking),
  ],
  checks: ['Room empty to the work, doors sealed, a clear way out.', ...leadSafe(load)],
  cautions: [CAUTIONS.smokeAlarms, ...(hasFire(load) ? [CAUTIONS.hotOpening] : [])],
})

const maskedFace = (load: Workload): number => load.built.mantel.breasts.reduce((m2, b) => m2 + b.paintedFace, 0)
/** Whether something burns, or may burn, in an opening of this wall. */
export const hasFire = (load: Workload): boolean =>
  load.built.mantel.breasts.some((b) => b.opening !== undefined && b.fuel !== 'none')

const TRADES = ['electrician', 'gas fitter', 'heating fitter'] as const

function tradeVisits(load: Workload): TaskDraft {
  const trades = [...load.built.devices.trades, ...load.built.mantel.trades]
  const booked = TRADES.filter((trade) => trades.some((t) => t.trade === trade))
  return {
    ...site,
    id: 'B3',
    title: `Moves and extensions by the ${booked.join(' and the ')}`,
    after: ['B2', ...booked.map((trade) => BOOKINGS[trade])],
    needed: booked.length > 0,
    setOut: trades.map((t) => t.says),
    checks: ['Each device proved dead, or in its new place and tested, in writing.'],
    cautions: [...(booked.includes('electrician') ? [CAUTIONS.power] : []), CAUTIONS.trade],
  }
}

function repairing(load: Workload): TaskDraft {
  const { repair, trim } = load.built.stripOut
  const thickness = load.context.figures.number('repair.thickness')
  const clockHours = load.dry('plaster') * thickness
  return {
    ...site,
    id: 'B4',
    title: 'Repair plaster',
    after: ['B2', 'R4', 'B3'],
    needed: repair.wall > 0,
    efforts: [effort('repair', repair.wall)],
    wait: { clockHours, says: `${load.dry('plaster')} h for each mm of plaster; ${thickness} mm planned` },
    tools: ['filler and plaster', 'trowels', 'straightedge'],
    setOut: [
      ...(trim.area > 0 ? [`${load.show.area(trim.area)} behind the trim that came off.`] : []),
      ...(repair.wall > trim.area ? [`About ${load.show.area(repair.wall - trim.area)} behind the old pieces.`] : []),
    ],
    checks: ['Flat under the straightedge where a box or plate will cover the edge.'],
    cautions: [CAUTIONS.sandDust],
  }
}

const washing = (load: Workload): TaskDraft => ({
  ...site,
  id: 'B5',
  title: 'Wash the masonry',
  after: ['B4'],
  needed: maskedFace(load) > 0,
  efforts: [effort('wash', maskedFace(load))],
  wait: { clockHours: load.dry('wash'), says: 'dry for a day' },
  tools: ['stiff brush', 'buckets', 'cleaner', 'sheeting'],
  setOut: [`${load.show.area(maskedFace(load))} of face, roughness counted.`],
  checks: ['No soot on a white cloth; nothing crumbles under the brush.'],
  cautions: [CAUTIONS.lead, CAUTIONS.ladder, ...(hasFire(load) ? [CAUTIONS.hotOpening] : [])],
})

/** Masonry is painted before any wood stands against it. */
function masonryCoats(load: Workload): readonly TaskDraft[] {
  const steps = coatSteps(load.built.coating, 'masonry', ['sealer', 'primer', 'top'])
  const first = ['B5', ORDERS.coatings]
  if (steps.length === 0 || maskedFace(load) === 0) return [absent('B6', first)]
  return steps.map(({ line, area, says }, i) => ({
    id: `B6.${i + 1}`,
    title: capital(says),
    after: i === 0 ? first : [`B6.${i}`],
    needed: true,
    efforts: [effort('masonry-coat', area)],
    place: 'site',
    work: 'paint',
    wait: {
      clockHours: line.recoatHoursLeast,
      says: `dry ${line.recoatHoursLeast} h`,
      ...(line.recoatHoursMost === null || i === steps.length - 1 ? {} : { mostClockHours: line.recoatHoursMost }),
    },
    tools: ['deep-pile roller', 'stiff brush', 'sheeting'],
    setOut: [load.built.coating.colours.masonry].filter((c) => c !== '').map((c) => `Colour: ${c}.`),
    checks: ['Joints filled with paint, no bare stone behind where a box will stand.'],
    cautions: [CAUTIONS.ladder, ...(hasFire(load) ? [CAUTIONS.hotOpening, CAUTIONS.manual] : [])],
  }))
}

const wallsFirst = (load: Workload): TaskDraft => ({
  id: 'B7',
  title: 'Walls behind the shelves: prime and first coat',
  after: ['B4', ORDERS.coatings],
  needed: load.built.shelves.shelves.length > 0 && load.built.coating.areas.wall > 0,
  efforts: [effort('wall-first', load.built.coating.areas.wall)],
  place: 'site',
  work: 'paint',
  wait: { clockHours: load.dry('wall-coat'), says: `dry ${load.dry('wall-coat')} h` },
  tools: ['roller', 'brush', 'sheeting'],
  setOut: [load.built.coating.colours.wall].filter((c) => c !== '').map((c) => `Colour: ${c}.`),
  checks: ['Corner to corner, the wall that will be seen between the shelves.'],
  cautions: [CAUTIONS.ladder],
})
