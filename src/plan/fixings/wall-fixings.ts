import { wallKind } from '../../job/chapters/wall.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { Part, Placement } from '../../things/part.ts'
import { less, sum } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { parseMark } from '../marks.ts'
import type { RunnableWall, Wall, WallFixing } from '../survey/survey.ts'
import { countOver, type FixingLine } from './fixing-line.ts'
import { ofBox } from './masses.ts'
import { backCleatHeld, cleatRow, nailerHeld, wallHold } from './wall-fixing-kinds.ts'

/** A run of boxes with nothing behind it that holds a screw. */
export const boxesNeedBlocking = messageKind<{ readonly place: string; readonly from: string; readonly to: string }>({
  code: 'C5',
  weight: 'confirm',
  source: 'common practice, no source; a box is built in only once it is fixed (ASTM F2057-23, 1.2)',
  says: ({ place, from, to }) => ({
    short: `Nothing is known in the wall of the ${place} that holds a screw.`,
    why: 'A box that is not fixed can tip over, and plaster alone holds nothing.',
    todo: `Find studs or masonry, or put blocking into the wall between ${from} and ${to} above the highest floor point, before the boxes stand.`,
  }),
})

export interface WallWork {
  readonly parts: readonly Part[]
  readonly boxes: readonly Box[]
  /** All walls: shelves hang where no box stands, too. */
  readonly walls: readonly Wall[]
}

/** Screws into studs or anchors into masonry: nailers of the boxes, and shelf cleats. */
export function wallFixings(
  context: PlanContext,
  work: WallWork,
): { readonly lines: readonly FixingLine[]; readonly messages: readonly Message[] } {
  const walls = work.walls.filter((wall): wall is RunnableWall => wall.kind !== 'breast')
  return {
    lines: [
      ...work.boxes.map((box) => nailerFixings(context, box, work.parts)),
      ...walls.flatMap((wall) =>
        work.parts.filter((p) => isCleat(p) && p.bay === wall.bay.id).map((part) => cleatFixing(context, part, wall)),
      ),
    ],
    messages: walls.flatMap((wall) => blockingMessages(context, wall, work.boxes)),
  }
}

function nailerFixings(context: PlanContext, box: Box, parts: readonly Part[]): FixingLine {
  const { fixing } = box.run.wall
  // A bought box has nailers too: they are parts of it all the same.
  const nailers = parts.filter((part) => ofBox(part, box) && parseMark(part.mark)?.role === 'N')
  const count = nailers.reduce((n, part) => n + part.quantity, 0)
  const { bought } = nailerHeld(context, fixing, { from: box.x, to: sum(box.x, box.width), width: box.width })
  const line = fastener(context, fixing, 'boxes to the wall')
  return { ...line, count: countOver(line.id, [count * bought]) }
}

/** A cleat along the back wall by what holds there; one on a return in a row along it. */
function cleatFixing(context: PlanContext, cleat: Part, wall: RunnableWall): FixingLine {
  const from = less(cleat.placement.x, wall.originX)
  const along = { from, to: sum(from, cleat.placement.dx), length: cleat.length, height: cleat.width }
  const count = runsAlongWall(cleat.placement)
    ? backCleatHeld(context, wall.fixing, along).bought
    : cleatRow(context, cleat.length)
  const line = fastener(context, wall.fixing, 'shelf cleats')
  return { ...line, count: countOver(line.id, [count * cleat.quantity]) }
}

const isCleat = (part: Part): boolean => parseMark(part.mark)?.role === 'C'

/** Back cleats lie along x, side cleats along y. */
export const runsAlongWall = ({ dx, dy }: Placement): boolean => dx >= dy

function fastener({ figures, show }: PlanContext, fixing: WallFixing, use: string) {
  const screw = { id: 'screw.wall', item: `wall screw ${show.withUnit(figures.length('screw.wall'))}` }
  const anchor = { id: 'anchor', item: 'masonry anchor with its screw' }
  return { ...(wallHold(fixing).fastener === 'anchor' ? anchor : screw), use, unit: 'piece' } as const
}

function blockingMessages(context: PlanContext, wall: RunnableWall, boxes: readonly Box[]): readonly Message[] {
  const { show } = context
  const here = boxes.filter((box) => box.run.bay.id === wall.bay.id)
  const [box] = here
  const behind = here.map((b) => nailerHeld(context, wall.fixing, { from: b.x, to: sum(b.x, b.width), width: b.width }))
  const studs = behind.reduce((n, b) => n + b.studs, 0)
  // Boxes are screwed to each other: two studs hold a run, one holds a single box.
  const held = wallHold(wall.fixing).anywhere || studs >= Math.min(2, here.length)
  if (box === undefined || held) return []
  const values = {
    place: wall.bay.name,
    from: show.withUnit(box.run.z0),
    to: show.withUnit(sum(box.run.z0, box.height)),
  }
  return [raise(boxesNeedBlocking, { about: questionKey(wall.bay.id, wallKind), place: wall.bay.name }, values)]
}
