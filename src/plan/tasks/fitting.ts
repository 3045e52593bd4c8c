import { edgeAt } from '../../geometry/edge.ts'
import type { CutOut, Part } from '../../things/part.ts'
import { type Length, sum, ZERO } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import { NAILER_NOTCH } from '../boxes/inside-parts.ts'
import { wallHold } from '../fixings/wall-fixing-kinds.ts'
import { LIGHT_CUT } from '../lights/light-cuts.ts'
import { plinthOnOf } from '../run/levellers.ts'
import { floorFinishOf } from '../run/run-levels.ts'
import type { Run } from '../run/slot.ts'
import { CAUTIONS } from './cautions.ts'
import type { TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import { boxesInRoom } from './in-room.ts'
import { ORDERS } from './office.ts'
import { countOf, marksOf, sized, type Workload } from './workload.ts'

const site = { place: 'site', work: 'boxFitting' } as const

/** Plinths, boxes and what is scribed to the walls round them. */
export const fittingTasks = (load: Workload): readonly TaskDraft[] => [
  levelLine(load),
  plinths(load),
  cutOuts(load),
  boxesInRoom(load),
  standing(load),
  scribing(load),
  counters(load),
  kickPlates(load),
]

function levelLine(load: Workload): TaskDraft {
  const { show, levelLine: line, built, context } = load
  const studs = built.survey.walls.flatMap((w) => {
    if (w.kind === 'breast') return []
    const found = wallHold(w.fixing).studs.map((c) => show.length(c))
    if (found.length === 0) return []
    return w.waits.fixing.length > 0
      ? [`Studs, ${w.bay.name}: nobody has measured them; find them and mark their centres before anything is fixed.`]
      : [`Studs, ${w.bay.name}: ${found.join(', ')} from its left end.`]
  })
  return {
    ...site,
    id: 'F1',
    title: 'Level line, studs, set-out on tape',
    after: ['B4'],
    needed: built.parts.length > 0,
    efforts: [effort('level-line', 1)],
    tools: ['long level or laser', 'pencil', 'tape', 'stud finder'],
    setOut: [
      `Line ${show.withUnit(line)} above the highest point of the floor, over all bays; where a floor is not measured, find its highest point first.`,
      ...[...new Set(built.slots.runs.map((r) => levels(load, r)))],
      ...floorToCome(load),
      ...studs,
    ],
    checks: [
      `Both ends of the line within ${show.withUnit(context.cut.step)} of each other.`,
      'Read the tape twice at each mark.',
    ],
    cautions: [CAUTIONS.cables],
  }
}

/** A floor that is still to be laid is in the heights already: nobody adds it again. */
function floorToCome({ show, context, built }: Workload): readonly string[] {
  const laid = built.slots.runs.length === 0 ? ZERO : floorFinishOf(context)
  return laid > 0
    ? [`The floor still to be laid, ${show.withUnit(laid)} thick, is in these heights: count from the floor of today.`]
    : []
}

/** `Plinth top 34 1/2 below the line; box top 4 1/2 below the line.` */
const levels = (load: Workload, run: Run): string =>
  `${run.bay.name}: plinth top ${load.fromLine(run.z0)}; box top ${load.fromLine(run.z1)}.`

function plinths(load: Workload): TaskDraft {
  const frames = load.loose('U')
  const bays = new Set(frames.map((p) => p.bay))
  const { show, context } = load
  const onFeet = plinthOnOf(context) === 'feet' ? [...new Set(load.built.boxes.boxes.map((box) => box.run))] : []
  return {
    ...site,
    id: 'F2',
    title: onFeet.length > 0 ? 'Screw feet under the boxes' : 'Plinths on packers',
    after: ['F1', 'W1', ORDERS.hardware],
    needed: frames.length + onFeet.length > 0,
    efforts: [effort('plinth', bays.size + onFeet.length)],
    marks: marksOf(frames),
    tools: ['long level', 'packers', 'driver', 'detector'],
    setOut: [
      ...load.built.slots.runs.filter((r) => bays.has(r.bay.id)).map((run) => packersOf(load, run)),
      ...onFeet.map(
        (run) =>
          `${run.bay.name}: feet under the four corners of each box and at each joint; underside of the boxes ${load.fromLine(run.z0)}.`,
      ),
    ],
    checks: [`Level both ways within ${show.withUnit(context.figures.length('scribe.fit'))} over its length.`],
    cautions: [CAUTIONS.cables],
  }
}

/** Packers at both ends: the packing at the highest floor, and the floor's drop there. */
function packersOf(load: Workload, run: Run): string {
  const { show, context } = load
  const packing = context.figures.length('plinth.packing')
  const at = (x: Length) => show.length(context.cut.near(sum(packing, edgeAt(run.wall.floor, x))))
  const right = sum(run.startX, run.width)
  return `${run.bay.name}: top ${show.length(run.z0)} up, ${load.fromLine(run.z0)}; packers about ${at(run.startX)} at the left, ${at(right)} at the right.`
}

function cutOuts(load: Workload): TaskDraft {
  const { show, built } = load
  const cut = built.parts.filter((p) => cutHere([p]).length > 0)
  return {
    ...site,
    id: 'F3',
    title: 'Cut-outs and notches',
    after: ['F1', 'W9', 'B3'],
    needed: cut.length > 0,
    efforts: [effort('cut-out', cutHere(cut).length)],
    marks: marksOf(cut),
    tools: ['jigsaw', 'drill', 'tape', 'vacuum'],
    setOut: cut.flatMap((p) =>
      cutHere([p]).map(
        (c) =>
          `${p.mark}, ${c.what}: from its left edge ${show.length(c.x)}, from its lower edge ${show.length(c.z)}; ${show.length(c.width)} wide, ${show.length(c.height)} high.`,
      ),
    ),
    checks: ['Measured again from the level line and the plinth before the saw goes in.'],
    cautions: [...(cut.some(holdsDevice) ? [CAUTIONS.power] : []), CAUTIONS.sawDust],
  }
}

/** What is cut on site: grooves and holes for lights, and the uprights' notches round nailers, were made in the shop. */
const cutHere = (parts: readonly Part[]): readonly CutOut[] =>
  parts.flatMap((p) => p.cutOuts.filter((c) => !c.what.startsWith(LIGHT_CUT) && !c.what.startsWith(NAILER_NOTCH)))

/** A notch for the baseboard meets no wire. */
const holdsDevice = (part: Part): boolean => cutHere([part]).some((c) => !c.what.includes('notch'))

function standing(load: Workload): TaskDraft {
  const { boxes } = load.built.boxes
  const tallFirst = [...boxes.filter((b) => b.run.kind === 'tall'), ...boxes.filter((b) => b.run.kind !== 'tall')]
  const joins = boxes.length - new Set(boxes.map((b) => b.run)).size
  return {
    ...site,
    id: 'F4',
    title: tallFirst.some((b) => b.run.kind === 'tall')
      ? 'Stand, join, fix the boxes: tall ones first'
      : 'Stand, join, fix the boxes',
    after: ['F2', 'F3', 'F0', 'B3', 'B6', 'W9', ORDERS.hardware],
    needed: boxes.length > 0,
    efforts: [effort('stand-box', boxes.length), effort('join-box', joins)],
    marks: tallFirst.map((b) => b.mark),
    tools: ['clamps', 'level', 'driver', 'packers', 'detector'],
    setOut: [
      ...tallFirst.map((b) => boxPlace(load, b)),
      'Clamp the fronts flush, screw box to box, level, then fix to the wall.',
    ],
    checks: [
      'Backs cut out before anything is fixed.',
      'Diagonals equal, fronts in one line by a straightedge: doors need it.',
    ],
    cautions: [
      ...(boxes.some((b) => b.run.kind === 'tall') ? [CAUTIONS.tallFirst] : [CAUTIONS.fixFirst]),
      CAUTIONS.cables,
      ...(boxes.some((b) => wallHold(b.run.wall.fixing).fastener === 'anchor') ? [CAUTIONS.masonryDust] : []),
    ],
  }
}

const boxPlace = (load: Workload, box: Box): string =>
  `${box.mark}: left edge ${load.show.length(box.x)} from the left end of the ${box.run.bay.name}, ${load.show.length(box.width)} wide, foot ${load.fromLine(box.run.z0)}.`

function scribing(load: Workload): TaskDraft {
  const pieces = [...load.loose('G'), ...load.loose('F')]
  return {
    ...site,
    id: 'F5',
    title: 'Scribe gables and fillers',
    after: ['F4', 'W9'],
    needed: pieces.length > 0,
    efforts: [effort('scribe', countOf(pieces))],
    marks: marksOf(pieces),
    tools: ['scribing block', 'plane', 'jigsaw', 'clamps'],
    setOut: pieces.map((p) => toTrim(load, p)),
    checks: [`Gap to the wall at most ${gapAllowed(load)}.`],
    cautions: [CAUTIONS.sawDust],
  }
}

const toTrim = (load: Workload, part: Part): string =>
  `${sized(part, load.show)}; ${part.leaveLong === '' ? 'at its size' : part.leaveLong}.`

/** Twice what a good scribe leaves. */
const gapAllowed = (load: Workload): string => {
  const fit = load.context.figures.length('scribe.fit')
  return load.show.withUnit(sum(fit, fit))
}

function counters(load: Workload): TaskDraft {
  const tops = load.loose('T')
  const bays = new Set(tops.map((p) => p.bay))
  return {
    ...site,
    id: 'F6',
    title: 'Counters: tip in, scribe, fix',
    after: ['F5', 'W9'],
    needed: tops.length > 0,
    efforts: [effort('counter', countOf(tops))],
    marks: marksOf(tops),
    tools: ['scribing block', 'saw and guide', 'plane', 'driver'],
    setOut: [
      ...tops.map((p) => toTrim(load, p)),
      ...[...load.built.tops.counterTop]
        .filter(([bay]) => bays.has(bay))
        .map(([bay, z]) => `Upper face ${load.show.length(z)} up, ${load.fromLine(z)} (${nameOf(load, bay)}).`),
    ],
    checks: [
      'Measured at the back and at the front on site before the long end is cut.',
      'Level, and tight under a straightedge.',
    ],
    cautions: [CAUTIONS.sawDust],
  }
}

const nameOf = (load: Workload, bay: string): string => load.context.bays.find((b) => b.id === bay)?.name ?? bay

function kickPlates(load: Workload): TaskDraft {
  const plates = load.loose('P')
  const play = load.context.figures.length('kick.floor-clear')
  const mouldings = load.built.fixings.lines.filter((line) => line.id.startsWith('moulding.'))
  return {
    ...site,
    id: 'F7',
    title: 'Trim and fix the kick plates',
    after: ['F5', 'F4', 'W9'],
    needed: plates.length + mouldings.length > 0,
    efforts: [
      effort('kick-plate', countOf(plates)),
      effort(
        'moulding',
        mouldings.reduce((m, l) => m + l.count, 0),
      ),
    ],
    marks: marksOf(plates),
    tools: ['saw', 'plane', 'scribing block', 'pin gun'],
    setOut: [
      ...plates.map(
        (p) =>
          `${p.mark}: about ${load.show.length(p.length)} long${p.taper === undefined ? '' : ` (${p.taper})`}; sawn ${load.show.length(p.roughLength)} × ${load.show.length(p.roughWidth)}.`,
      ),
      ...mouldings.map((line) => `${line.item}: ${line.use}, mitred at outside corners, butted to the walls.`),
    ],
    checks: [
      `Trimmed to what is measured between the boxes and walls now; ${load.show.withUnit(play)} clear of the floor.`,
    ],
    cautions: [CAUTIONS.sawDust],
  }
}
