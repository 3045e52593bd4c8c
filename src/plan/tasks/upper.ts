import { wallHold } from '../fixings/wall-fixing-kinds.ts'
import type { Breast } from '../mantel/mantel.ts'
import { bothLegs } from '../mantel/mantel-legs.ts'
import type { Shelf } from '../shelves/shelves.ts'
import { CAUTIONS } from './cautions.ts'
import type { TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import { hasFire } from './house.ts'
import { ORDERS } from './office.ts'
import { legCount, marksOf, type Workload } from './workload.ts'

/** The mantel, then cleats and shelves above it. */
export const upperTasks = (load: Workload): readonly TaskDraft[] => [mantel(load), cleats(load), shelving(load)]

function mantel(load: Workload): TaskDraft {
  const breasts = load.built.mantel.breasts.filter((b) => b.mantel !== undefined)
  return {
    id: 'F8',
    title: 'Mantel: fit it dry, then fix it',
    after: ['B6', 'F1', 'W9', ORDERS.hardware],
    needed: breasts.length > 0,
    efforts: [effort('mantel-fix', breasts.length), effort('leg-fix', legCount(load))],
    place: 'site',
    work: 'mantelFitting',
    marks: marksOf(load.loose('E')),
    tools: ['level', 'drill and vacuum', 'driver', 'props', 'scribing block'],
    setOut: breasts.flatMap((b) => mantelPlace(load, b)),
    checks: [
      'Dry first: level, tight to the face, the ledger takes the load before any adhesive.',
      'Clearances to the opening measured again with the mantel up.',
    ],
    cautions: [CAUTIONS.masonryDust, ...(hasFire(load) ? [CAUTIONS.hotOpening, CAUTIONS.manual] : [])],
  }
}

function mantelPlace(load: Workload, { mantel: m, bay }: Breast): readonly string[] {
  if (m === undefined) return []
  const { show } = load
  return [
    `${bay.name}: left end ${show.length(m.x)} from its left edge, ${show.length(m.length)} long, ${show.length(m.depth)} out.`,
    `Underside ${show.length(m.underside)} up, ${load.fromLine(m.underside)}; top ${show.length(m.top)} up, ${load.fromLine(m.top)}.`,
    ...(m.legs === undefined ? [] : bothLegs(m.legs)).map(
      ({ side, at, foot }) =>
        `${side} leg: left edge ${show.length(at.x)} from the breast’s left edge, foot on the ${foot}, ${show.length(at.height)} high; measured again before it is cut.`,
    ),
  ]
}

function cleats(load: Workload): TaskDraft {
  const { shelves } = load.built.shelves
  return {
    id: 'F9',
    title: 'Cleats, level across the bays',
    after: ['F1', 'F4', 'F6', 'F8', 'B7', 'W1', ORDERS.hardware],
    needed: shelves.length > 0,
    efforts: [effort('cleats', shelves.length)],
    place: 'site',
    work: 'shelfFitting',
    marks: marksOf(load.loose('C')),
    tools: ['laser or long level', 'driver', 'detector', 'pin gun', 'adhesive'],
    setOut: shelves.map(
      (s) =>
        `${s.mark}: cleat top ${load.show.length(s.cleatTop)} up, ${load.fromLine(s.cleatTop)} (shelf top ${load.show.length(s.z)}).`,
    ),
    checks: [
      'Two bonds: pins or instant adhesive hold it, construction adhesive over the whole back carries; tight to the wall.',
      'A screw in every stud; only screws are counted for the load.',
    ],
    cautions: [
      CAUTIONS.cables,
      ...(onMasonry(load) ? [CAUTIONS.masonryDust] : []),
      ...(reached(load) ? [CAUTIONS.ladder] : []),
    ],
  }
}

const onMasonry = (load: Workload): boolean =>
  load.built.survey.walls.some((w) => w.kind !== 'breast' && wallHold(w.fixing).fastener === 'anchor')

/** Whether a shelf is so high that a step is needed. */
function reached(load: Workload): boolean {
  const step = load.context.figures.length('shelf.step-needed')
  return load.built.shelves.shelves.some((s) => s.z > step)
}

function shelving(load: Workload): TaskDraft {
  const { shelves } = load.built.shelves
  return {
    id: 'F10',
    title: 'Shelves: trim, slide on, glue, pin',
    after: ['F9', 'W9'],
    needed: shelves.length > 0,
    efforts: [effort('shelf-fix', shelves.length)],
    place: 'site',
    work: 'shelfFitting',
    wait: { clockHours: load.dry('adhesive'), says: `adhesive ${load.dry('adhesive')} h before any load` },
    marks: shelves.map((s) => s.mark),
    tools: ['saw and guide', 'bevel', 'adhesive gun', 'pin gun', 'level'],
    setOut: shelves.map((s) => shelfSize(load, s)),
    checks: [
      'Measured at the back and at the front at its own height before the long end is cut.',
      'Slid home dry first; level along and across.',
    ],
    cautions: [CAUTIONS.sawDust, CAUTIONS.noLoad, ...(reached(load) ? [CAUTIONS.ladder] : [])],
  }
}

function shelfSize(load: Workload, s: Shelf): string {
  const { show } = load
  const offsets =
    s.offsetLeft === 0 && s.offsetRight === 0
      ? 'ends square'
      : `ends off square over the depth: left ${show.length(s.offsetLeft)}, right ${show.length(s.offsetRight)} (+ to the right)`
  return `${s.mark}: back ${show.length(s.backLength)}, front ${show.length(s.frontLength)}, ${offsets}; left end ${show.length(s.x)} from the left corner.`
}
