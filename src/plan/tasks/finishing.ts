import type { Joint } from '../../things/joint.ts'
import { inMetres } from '../../units/length.ts'
import { filledHoles } from '../fixings/filled-holes.ts'
import { CAUTIONS } from './cautions.ts'
import { absent, type TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import { hangingTasks } from './hanging.ts'
import { lightFitting } from './lights.ts'
import { ORDERS } from './office.ts'
import type { Taping } from './tape-time.ts'
import type { Workload } from './workload.ts'

/** Filling, tape, caulk, paint, doors, hand-over. */
export const finishingTasks = (load: Workload, taping: Taping): readonly TaskDraft[] => [
  filling(load),
  taped(load),
  ...caulking(load),
  tapingAgain(load, taping),
  touchUp(load),
  ...hangingTasks(load),
  lightFitting(load),
  screen(load),
  handOver(load),
  snagVisit(load),
]

const site = { place: 'site', work: 'joints' } as const
/** Everything that leaves a hole or a joint behind it. */
const FITTED = ['F4', 'F5', 'F6', 'F7', 'F8', 'F10', 'F11']

function filling(load: Workload): TaskDraft {
  const holes = filledHoles(load.built.fixings.lines)
  return {
    ...site,
    id: 'D1',
    title: 'Fill holes, sand, spot-prime',
    after: FITTED,
    needed: holes > 0,
    efforts: [effort('hole', holes)],
    wait: { clockHours: load.dry('filler'), says: `filler and primer ${load.dry('filler')} h` },
    tools: ['filler', 'knife', '240 paper', 'small brush'],
    setOut: [`About ${holes} holes.`],
    checks: ['Nothing felt under a flat hand.'],
    cautions: [CAUTIONS.sandDust],
  }
}

function taped(load: Workload): TaskDraft {
  const joints = load.built.joints.joints.filter((j) => j.tape > 0)
  const metres = joints.reduce((m, j) => m + inMetres(j.tape), 0)
  const { show, context } = load
  return {
    ...site,
    id: 'D2',
    title: 'Tape the joints',
    after: ['D1'],
    needed: metres > 0,
    efforts: [effort('tape', metres)],
    tools: ['masking tape', 'knife'],
    setOut: [
      `On the painted piece, ${show.withUnit(context.figures.length('tape.back'))} inside its edge, ${show.withUnit(context.figures.length('tape.overlap'))} beyond each end.`,
      `${jointsWord(joints)}.`,
    ],
    checks: [
      'Pressed down with a thumbnail, no lift at the corners.',
      `Off the wall again within ${context.figures.number('tape.days-on')} days, or taped anew.`,
    ],
    cautions: highJoints(load),
  }
}

const highJoints = (load: Workload): readonly string[] =>
  load.built.shelves.shelves.length > 0 || load.built.boxes.boxes.some((b) => b.run.kind === 'tall')
    ? [CAUTIONS.ladder]
    : []

/** `Joints 1 to 6, 9`; `Joint 33`. */
const jointsWord = (joints: readonly Joint[]): string =>
  `${joints.length === 1 ? 'Joint' : 'Joints'} ${numbersOf(joints)}`

/** `1 to 6, 9, 11 to 14`. */
function numbersOf(joints: readonly Joint[]): string {
  const numbers = joints.map((j) => j.number).toSorted((a, b) => a - b)
  const starts = numbers.filter((n, i) => numbers[i - 1] !== n - 1)
  const ends = numbers.filter((n, i) => numbers[i + 1] !== n + 1)
  return starts.map((a, i) => (a === ends[i] ? `${a}` : `${a} to ${ends[i]}`)).join(', ')
}

/** One task a pass: a second pass only runs over the joints that need it. */
function caulking(load: Workload): readonly TaskDraft[] {
  const caulked = load.built.joints.joints.filter((j) => j.kind !== 'open' && j.kind !== 'colour-line')
  const passes = Math.max(0, ...caulked.map((j) => j.passes))
  const first = ['D2', ORDERS.hardware]
  if (passes === 0) return [absent('D3', first)]
  return Array.from({ length: passes }, (_, i) => {
    const joints = caulked.filter((j) => j.passes > i)
    const metres = joints.reduce((m, j) => m + inMetres(j.length), 0)
    return {
      ...site,
      id: `D3.${i + 1}`,
      title: `Caulk, pass ${i + 1} of ${passes}`,
      after: i === 0 ? first : [`D3.${i}`],
      needed: true,
      efforts: [effort('caulk', metres)],
      wait: { clockHours: load.dry('caulk'), says: 'overnight; the cartridge’s own sheet replaces it' },
      tools: ['caulk gun', 'wet cloth', 'tooling stick', 'backer rod where the list says so'],
      setOut: [`${jointsWord(joints)}, over the edge of the tape where there is one.`],
      checks: [
        i === 0 ? 'One bead, tooled once; kick plate to floor stays open.' : 'Filled flush: no hollow left to see.',
      ],
      cautions: highJoints(load),
    }
  })
}

/** Old tape off before it bakes on, and fresh tape for the paint, where drying or days off take too long. */
function tapingAgain(load: Workload, taping: Taping): TaskDraft {
  const first = taped(load)
  return {
    ...first,
    id: 'D10',
    title: 'Pull the tape, tape the joints again',
    after: ['D3'],
    needed: first.needed && taping === 'twice',
  }
}

function touchUp(load: Workload): TaskDraft {
  const { joints, coating } = load.built
  return {
    ...site,
    id: 'D4',
    title: 'Touch-up and wall coats; tape off while soft',
    after: ['D3', 'D10', 'B7', ORDERS.coatings],
    needed: joints.joints.length > 0 || coating.areas.wall > 0,
    efforts: [effort('touch-up', coating.areas.wall)],
    work: 'joints',
    wait: { clockHours: load.dry('contact'), says: `${load.dry('contact')} h before anything touches it` },
    tools: ['brush', 'fine roller', 'knife for the tape'],
    setOut: [
      'Wall colour over the last pass and onto the tape; tape off while the paint is soft.',
      ...[coating.colours.wall].filter((c) => c !== '').map((c) => `Wall colour: ${c}.`),
    ],
    checks: ['One straight line, looked at from arm’s length.'],
    cautions: highJoints(load),
  }
}

const screen = (load: Workload): TaskDraft => ({
  id: 'D7',
  title: 'Screen and cables, by the client’s installer',
  after: ['F8', 'D4', 'B6'],
  needed: load.built.mantel.breasts.some((b) => b.screen !== undefined),
  place: 'site',
  work: 'handOver',
  setOut: load.built.mantel.breasts.flatMap((b) =>
    b.screen === undefined
      ? []
      : [
          `${b.bay.name}: lower edge ${load.show.length(b.screen.z)} up, left edge ${load.show.length(b.screen.x)} from its left edge.`,
          ...b.cable.says,
        ],
  ),
  checks: ['Above the heat limit of the screen’s manual; low voltage only in the cable hole.'],
  cautions: [CAUTIONS.power, CAUTIONS.manual],
})

const handOver = (load: Workload): TaskDraft => ({
  id: HAND_OVER,
  title: 'Clean, photographs, chip kit, care sheet, hand over',
  after: ['D5', 'D6', 'D7', 'D8', 'D4', 'W9', 'B6', 'A4.1', 'A4.2', 'A4.3'],
  needed: load.context.bays.length > 0,
  efforts: [effort('hand-over', 1)],
  place: 'site',
  work: 'handOver',
  wait: { clockHours: load.context.figures.number('visit.snag') * HOURS_A_DAY, says: 'two weeks of use' },
  tools: ['vacuum', 'cloths', 'camera', 'labelled jars'],
  checks: [
    'Smoke alarms uncovered.',
    'Each colour labelled with sheen, product and date.',
    'Client shown: load of the shelves, care, when doors may be washed.',
  ],
  cautions: [
    CAUTIONS.noLoad,
    ...(load.built.fronts.drawers.length > 0 ? [CAUTIONS.climbing] : []),
    ...(load.built.mantel.breasts.some((b) => b.fuel !== 'none') ? [CAUTIONS.manual] : []),
  ],
})

const snagVisit = (load: Workload): TaskDraft => ({
  id: 'E2',
  title: 'Snag visit',
  after: [HAND_OVER],
  needed: load.context.bays.length > 0,
  efforts: [effort('snag', 1)],
  place: 'site',
  work: 'handOver',
  tools: ['driver', 'chip kit', 'caulk'],
  checks: ['Doors adjusted, joints looked at, shelves loaded and level.'],
  cautions: [],
})

/** The task whose end is the finish of the job. */
export const HAND_OVER = 'E1'
const HOURS_A_DAY = 24
