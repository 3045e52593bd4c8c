import { handle, hinge } from '../../job/chapters/hardware.ts'
import type { Part } from '../../things/part.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { Leaf } from '../fronts/fronts.ts'
import { parseMark } from '../marks.ts'
import type { FixingLine } from './fixing-line.ts'

interface HardwareWork {
  readonly boxes: readonly Box[]
  readonly leaves: readonly Leaf[]
  readonly parts: readonly Part[]
}

/** Hinges, handles, bumpers, shelf pins and packers. */
export function hardware(context: PlanContext, { boxes, leaves, parts }: HardwareWork): readonly FixingLine[] {
  const piece = (id: string, item: string, use: string, count: number): FixingLine => ({
    id,
    item,
    use,
    count,
    unit: 'piece',
  })
  const shelves = boxes.reduce((n, box) => n + box.looseShelves, 0)
  const crosses = parts.filter((part) => parseMark(part.mark)?.role === 'U' && part.piece === 'cross-piece')
  return [
    piece(
      ...hingeOf(context),
      'leaves',
      leaves.reduce((n, leaf) => n + leaf.hinges, 0),
    ),
    piece(...handleOf(context), 'leaves', leaves.length),
    piece('bumper', 'bumper', 'leaves, two each', 2 * leaves.length),
    piece('shelf-pin', 'shelf pin', 'loose shelves, four each', PINS_PER_SHELF * shelves),
    piece(
      'packer',
      'packer',
      'under each cross-piece, front and back',
      2 * crosses.reduce((n, p) => n + p.quantity, 0),
    ),
  ]
}

const PINS_PER_SHELF = 4

function hingeOf({ settle }: PlanContext): readonly [id: string, item: string] {
  const chosen = settle.choice(hinge, undefined, () => ({
    value: 'soft-close',
    because: 'doors near a seat should not slam',
  }))
  return chosen === 'plain'
    ? ['hinge.plain', 'cup hinge, plain, with its plate']
    : ['hinge.soft', 'cup hinge, soft-close, with its plate']
}

function handleOf({ settle }: PlanContext): readonly [id: string, item: string] {
  const chosen = settle.choice(handle, undefined, () => ({ value: 'knob', because: 'one hole, any door' }))
  if (chosen === 'none') return ['push-latch', 'push-to-open latch']
  return chosen === 'pull' ? ['handle', 'pull with two holes'] : ['handle', 'knob']
}
