import { wallKind } from '../../job/chapters/wall.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { Part, Placement } from '../../things/part.ts'
import { type Length, nanometres } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { parseMark } from '../marks.ts'
import type { RunnableWall } from '../survey/survey.ts'
import { along } from './along.ts'
import type { FixingLine } from './fixing-line.ts'
import { ofBox } from './masses.ts'

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
}

/** Screws into studs or anchors into masonry: nailers of the boxes, and shelf cleats. */
export function wallFixings(
  context: PlanContext,
  work: WallWork,
): { readonly lines: readonly FixingLine[]; readonly messages: readonly Message[] } {
  const walls = new Map(work.boxes.map((box) => [box.run.bay.id, box.run.wall]))
  return {
    lines: [
      ...work.boxes.flatMap((box) => nailerFixings(context, box, work.parts)),
      ...work.parts.filter(isCleat).map((part) => cleatFixing(context, part, walls.get(part.bay))),
    ],
    messages: [...walls.values()].flatMap((wall) => blockingMessages(context, wall, work.boxes)),
  }
}

function nailerFixings(context: PlanContext, box: Box, parts: readonly Part[]): readonly FixingLine[] {
  const { wall } = box.run
  // A bought box has nailers too: they are parts of it all the same.
  const nailers = parts.filter((part) => ofBox(part, box) && parseMark(part.mark)?.role === 'N')
  const count = nailers.reduce((n, part) => n + part.quantity, 0)
  if (wall.fixing.kind === 'masonry') {
    const { figures } = context
    const [end, pitch] = [figures.length('screw.top-end'), figures.length('screw.anchor-pitch')]
    return [{ ...anchor('boxes to the wall'), count: count * along({ length: box.width, end, pitch }) }]
  }
  const from = box.x
  const studs = studsIn(wall, from, nanometres(from + box.width))
  return [{ ...wallScrew(context, 'boxes to the wall'), count: count * Math.max(2, 2 * studs) }]
}

/** Studs with their centre between two points of the bay. */
const studsIn = ({ fixing }: RunnableWall, from: Length, to: Length): number =>
  fixing.kind === 'studs' ? fixing.centres.filter((centre) => centre >= from && centre <= to).length : 0

/** A cleat along the back wall takes its studs, at least two; one on a return, or on masonry, a row along its length. */
function cleatFixing(context: PlanContext, cleat: Part, wall: RunnableWall | undefined): FixingLine {
  const { figures } = context
  const [end, pitch] = [figures.length('screw.cleat-end'), figures.length('screw.top-pitch')]
  const row = along({ length: cleat.length, end, pitch }) * cleat.quantity
  if (wall?.fixing.kind === 'masonry') return { ...anchor('shelf cleats'), count: row }
  const screw = wallScrew(context, 'shelf cleats')
  if (wall === undefined || !runsAlongWall(cleat.placement)) return { ...screw, count: row }
  const from = nanometres(cleat.placement.x - wall.originX)
  const studs = studsIn(wall, from, nanometres(from + cleat.placement.dx))
  const perStud = cleat.width >= figures.length('cleat.two-screws') ? 2 : 1
  return { ...screw, count: Math.max(2, studs * perStud) * cleat.quantity }
}

const isCleat = (part: Part): boolean => parseMark(part.mark)?.role === 'C'

/** Back cleats lie along x, side cleats along y. */
export const runsAlongWall = ({ dx, dy }: Placement): boolean => dx >= dy

const anchor = (use: string) => ({ id: 'anchor', item: 'masonry anchor with its screw', use, unit: 'piece' }) as const

const wallScrew = ({ figures, show }: PlanContext, use: string) =>
  ({ id: 'screw.wall', item: `wall screw ${show.withUnit(figures.length('screw.wall'))}`, use, unit: 'piece' }) as const

function blockingMessages({ show }: PlanContext, wall: RunnableWall, boxes: readonly Box[]): readonly Message[] {
  const here = boxes.filter((box) => box.run.bay.id === wall.bay.id)
  const [box] = here
  const studs = here.reduce((n, b) => n + studsIn(wall, b.x, nanometres(b.x + b.width)), 0)
  // Boxes are screwed to each other: two studs hold a run, one holds a single box.
  const held = wall.fixing.kind === 'masonry' || studs >= Math.min(2, here.length)
  if (box === undefined || held) return []
  const values = {
    place: wall.bay.name,
    from: show.withUnit(box.run.z0),
    to: show.withUnit(nanometres(box.run.z0 + box.height)),
  }
  return [raise(boxesNeedBlocking, { about: questionKey(wall.bay.id, wallKind), place: wall.bay.name }, values)]
}
