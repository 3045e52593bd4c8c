import type { HelperTask } from '../audience-fields.ts'
import type { ForHelper } from '../for-helper.ts'
import { HOLD, isHeld } from '../held.ts'

type Known = Pick<ForHelper, 'parts' | 'leaves' | 'drawers' | 'shelves' | 'boxes' | 'breasts' | 'bays'>

/** A task whose set-out gives no size of what waits for a measurement: such a line names the piece and says HOLD. */
export function withoutHeldSizes(task: HelperTask, known: Known): HelperTask {
  const marks = heldMarks(known)
  const places = heldPlaces(task, marks, known)
  const said = (line: string): string => {
    const held = wordsOf(line).filter((word) => marks.has(word))
    const named = held.length > 0 ? [...new Set(held)] : places.filter((place) => line.includes(place)).slice(0, 1)
    return named.length === 0 || !/\d/.test(line) ? line : `${named.join(', ')}: ${HOLD}, measure first.`
  }
  return { ...task, setOut: [...new Set(task.setOut.map(said))] }
}

const wordsOf = (line: string): readonly string[] => line.split(/[^A-Za-z0-9-]+/)

/** Marks of all pieces that wait, and of the boxes they make. */
function heldMarks({ parts, leaves, drawers, shelves, boxes }: Known): ReadonlySet<string> {
  const pieces = parts.filter(isHeld)
  return new Set([
    ...[...pieces, ...leaves.filter(isHeld), ...drawers.filter(isHeld), ...shelves.filter(isHeld)].map(
      (piece) => piece.mark,
    ),
    ...boxes.filter((box) => pieces.some((part) => part.id.startsWith(`${box.id}/`))).map((box) => box.mark),
  ])
}

/** Names of the bays where something this task handles waits: its lines that name no mark name the bay. */
function heldPlaces(task: HelperTask, marks: ReadonlySet<string>, known: Known): readonly string[] {
  const bays = new Set([
    ...known.parts.filter((p) => marks.has(p.mark) && task.marks.includes(p.mark)).map((p) => p.bay),
    ...known.boxes.filter((b) => marks.has(b.mark) && task.marks.includes(b.mark)).map((b) => b.run.bay.id),
    ...known.breasts.filter(isHeld).map((b) => b.bay.id),
  ])
  return known.bays.filter((bay) => bays.has(bay.id)).map((bay) => bay.name)
}
