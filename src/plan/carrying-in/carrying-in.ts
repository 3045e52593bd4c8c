import { hallway, narrowTurn, smallestDoor } from '../../job/chapters/carrying.ts'
import { questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import { type Message, type MessageKind, raise } from '../../things/message.ts'
import type { PlanContext } from '../context.ts'
import { boxDoesNotComeIn, pieceDoesNotComeIn, sheetDoesNotComeIn } from './carrying-messages.ts'
import { type Carried, panelsOf, type ToCarry, thingsCarried } from './things-carried.ts'
import { largestSide, longestFirst, type Passing, passing, type WayIn, wayIn } from './way-in.ts'

/** How each thing comes into the house. */
export interface CarryingIn {
  /** By id of the box, shelf, mantel or part; empty where no way in was measured. */
  readonly ways: ReadonlyMap<string, Passing>
  /** Marks of boxes that are put together in the room. */
  readonly builtInRoom: ReadonlySet<string>
  readonly messages: readonly Message[]
}

/** Every box, shelf, mantel, loose part and sheet against the smallest door, the tightest turn and the hallway. */
export function carryingIn(context: PlanContext, work: ToCarry): CarryingIn {
  const way = wayIn(context)
  if (way.door === undefined && way.turn === undefined && way.hall === undefined)
    return { ways: new Map(), builtInRoom: new Set(), messages: [] }
  const carried = thingsCarried(work)
  const found = carried.map((thing) => ({ thing, how: howIn(thing, way) }))
  const stuck = found.filter(({ how }) => how === 'not').map(({ thing }) => thing)
  const boxes = stuck.filter((t) => t.kind === 'box')
  const builtInRoom = new Set(boxes.map((b) => b.mark))
  const panels = panelsOf(work.parts, builtInRoom).filter((p) => howIn(p, way) === 'not')
  const pieces = [...stuck.filter((t) => t.kind === 'piece'), ...panels]
  return {
    ways: new Map(found.map(({ thing, how }) => [thing.id, how])),
    builtInRoom,
    messages: [
      ...said(context, boxDoesNotComeIn, boxes, way),
      ...said(context, pieceDoesNotComeIn, pieces, way),
      ...said(
        context,
        sheetDoesNotComeIn,
        stuck.filter((t) => t.kind === 'sheet'),
        way,
      ),
    ],
  }
}

const howIn = (thing: Carried, way: WayIn): Passing =>
  within(thing.id, () => passing({ sides: longestFirst(...thing.sizes.map((s) => s.size)), way }))

/** Things of a kind named in a message; the rest is counted. Names of sheets are long. */
const NAMED: Readonly<Record<Carried['kind'], number>> = { box: 3, piece: 3, sheet: 1 }

type Said = Parameters<typeof boxDoesNotComeIn.says>[0]

function said(
  context: PlanContext,
  kind: MessageKind<Said>,
  things: readonly Carried[],
  way: WayIn,
): readonly Message[] {
  const [first] = things
  if (first === undefined) return []
  const shown = things.slice(0, NAMED[first.kind])
  const more = things.length > shown.length ? `, ${things.length - shown.length} more` : ''
  return [
    raise(
      kind,
      { about: questionKey('job', measuredOf(way)), place: 'way in' },
      {
        what: `${shown.map((t) => t.mark).join(', ')}${more}`,
        most: shown.map((t) => mostOf(context, t, way)).join('; '),
        way: wayWords(context, way),
      },
    ),
  ]
}

const measuredOf = (way: WayIn) =>
  way.door !== undefined ? smallestDoor : way.turn !== undefined ? narrowTurn : hallway

/** `L-T1 at most 80 long` */
function mostOf(context: PlanContext, { mark, sizes }: Carried, way: WayIn): string {
  const sorted = sizes.toSorted((a, b) => b.size - a.size)
  const sides = longestFirst(...sorted.map((s) => s.size))
  const bounds = ([0, 1, 2] as const).flatMap((which) => {
    const most = largestSide(context, sides, which, way)
    const says = sorted[which]?.says
    return most > 0 && says !== undefined ? [`${context.show.withUnit(most)} ${says}`] : []
  })
  return bounds.length === 0 ? `${mark} at no size` : `${mark} at most ${bounds.join(' or ')}`
}

/** The clear sizes it is checked against, play taken off. */
function wayWords({ show }: PlanContext, { door, turn, hall }: WayIn): string {
  const size = (a: Parameters<typeof show.length>[0], b: Parameters<typeof show.length>[0]) =>
    `${show.length(a)} × ${show.withUnit(b)}`
  return [
    ...(door === undefined ? [] : [`a door of ${size(door.width, door.height)}`]),
    ...(turn === undefined ? [] : [`a turn from ${show.length(turn.first)} into ${show.withUnit(turn.second)}`]),
    ...(hall === undefined ? [] : [`a hallway of ${size(hall.width, hall.height)}`]),
  ]
    .join(', ')
    .concat(', play taken off')
}
