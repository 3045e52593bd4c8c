import { checkWords, cupFigures, handleOf } from '../fronts/door-choices.ts'
import { CAUTIONS } from './cautions.ts'
import type { TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import { ORDERS } from './office.ts'
import type { Workload } from './workload.ts'

/** Doors hung, then what goes into the boxes. */
export const hangingTasks = (load: Workload): readonly TaskDraft[] => [hanging(load), insides(load)]

const AFTER = ['D4', 'F4', 'W9', ORDERS.hardware]

function hanging(load: Workload): TaskDraft {
  const { leaves } = load.built.fronts
  const { show, context } = load
  const { plateBack, known } = cupFigures(context)
  const handles = handleOf(context).handle.holes === 0 ? 0 : leaves.length
  return {
    id: 'D5',
    title: 'Hang and adjust the doors, handles on',
    after: AFTER,
    needed: leaves.length > 0,
    efforts: [effort('hang', leaves.length), effort('handle', handles)],
    place: 'site',
    work: 'hanging',
    marks: leaves.map((l) => l.mark),
    tools: ['driver', 'hinge jig', 'straightedge', 'blanket'],
    setOut: [
      ...leaves.map(
        (l) =>
          `${l.mark}: hinges ${l.hingeSide}, ${l.hinges} of them, plates at ${l.plates.map(show.length).join(', ')} above the lower edge of the box.`,
      ),
      ...(leaves.length === 0
        ? []
        : [
            `Screw line of every plate ${show.withUnit(plateBack)} behind the front edge of the box side${checkWords(known, 'hinge')}.`,
          ]),
    ],
    checks: ['Gaps even, tops in one line, no leaf touches a wall or the next one.'],
    cautions: [CAUTIONS.fixFirst],
  }
}

function insides(load: Workload): TaskDraft {
  const { show } = load
  const { boxes } = load.built.boxes
  const { leaves, drawers } = load.built.fronts
  const fronts = leaves.length + drawers.length
  const handles = handleOf(load.context).handle.holes === 0 ? 0 : drawers.length
  return {
    id: 'D6',
    title: drawers.length > 0 ? 'Drawers, loose shelves and bumpers' : 'Loose shelves and bumpers',
    after: AFTER,
    needed: boxes.some((b) => b.looseShelves > 0) || fronts > 0,
    efforts: [effort('inside', boxes.length), effort('hang-drawer', drawers.length), effort('handle', handles)],
    place: 'site',
    work: 'hanging',
    marks: [...boxes, ...drawers].map((b) => b.mark),
    tools: ['shelf pins', 'bumpers', ...(drawers.length > 0 ? ['driver', 'two-sided tape'] : [])],
    setOut: [
      ...boxes.filter((b) => b.looseShelves > 0).map((b) => `${b.mark}: loose shelves, ${b.looseShelves}.`),
      ...drawers.map(
        ({ mark, box, number, body }) =>
          `${mark}: into ${box.mark}, drawer ${number} from the top, on slides of ${show.withUnit(body.length)}.`,
      ),
    ],
    checks: [
      ...(boxes.some((b) => b.looseShelves > 0) ? ['Every shelf sits on four pins and does not rock.'] : []),
      ...(drawers.length > 0 ? ['Every drawer runs freely and shuts flush; gaps of the fronts even.'] : []),
    ],
    cautions: drawers.length > 0 ? [CAUTIONS.fixFirst] : [],
  }
}
