import { formula } from '../../things/formula.ts'
import {
  inMetres,
  type Length,
  less,
  millimetres,
  nanometres,
  over,
  shortest,
  size,
  sum,
  times,
} from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import type { BodyShape } from '../shelves/body-shape.ts'

/** One length of a counter between two joints, measured from the counter's back left corner. */
export interface CounterPiece {
  readonly from: Length
  readonly back: Length
  readonly front: Length
  readonly roughLength: Length
  readonly joinsLeft: boolean
  readonly joinsRight: boolean
  /** Where its joints lie; a box longer than a sheet is joined on the box. */
  readonly joinsOver: 'box joints' | 'a box'
}

interface Whole {
  readonly body: BodyShape
  readonly thickness: Length
  readonly roughDepth: Length
  /** x of the joints between boxes, in the bay's own x. */
  readonly boxJoints: readonly Length[]
}

/** The counter in as few pieces as a sheet and two people allow, none longer than the sheet, joined over joints between boxes. */
export function counterPieces(context: PlanContext, whole: Whole): readonly CounterPiece[] {
  const { body } = whole
  const { joints, joinsOver } = jointsFor(context, whole)
  const inner = joints.map((x) => less(x, body.x))
  const ends = [nanometres(0), ...inner, body.back]
  return ends.slice(1).map((to, i) => pieceOf(context, whole, { from: ends[i] ?? nanometres(0), to, joinsOver }))
}

/** Length of a piece along the wall, between two joints or a joint and the end. */
export const pieceBack = formula<{ from: Length; to: Length }, Length>(
  {
    id: 'counter.piece-back',
    plain: 'from joint to joint, or to the end',
    source: 'geometry',
    units: { from: 'length', to: 'length' },
  },
  ({ from, to }) => less(to, from),
)

/** The piece at the front: longer or shorter by what its walled ends run off square. */
export const pieceFront = formula<{ back: Length; leftEnd: Length; rightEnd: Length }, Length>(
  {
    id: 'counter.piece-front',
    plain: 'length at the back + what each walled end runs off square',
    source: 'geometry',
    from: { back: pieceBack },
    units: { leftEnd: 'length', rightEnd: 'length' },
  },
  ({ back, leftEnd, rightEnd }) => less(sum(back, rightEnd), leftEnd),
)

const joinedBoard = formula<{ back: Length; leftEnd: Length; rightEnd: Length }, Length>(
  {
    id: 'counter.piece-board',
    plain: 'length at the back + what each walled end runs off square',
    source: 'geometry',
    from: { back: pieceBack },
    units: { leftEnd: 'length', rightEnd: 'length' },
  },
  ({ back, leftEnd, rightEnd }) => sum(back, size(leftEnd), size(rightEnd)),
)

/** Length of the board a counter piece is cut from. */
export const pieceRough = formula<{ board: Length; leftLong: Length; cut: CutStep }, Length>(
  {
    id: 'counter.rough-length',
    plain: 'board it takes + left long, up to the cut step',
    source: 'common practice, no source',
    from: {
      board: [joinedBoard, { id: 'body.extent' }, { id: 'body.length' }, { id: 'counter.flat-length' }],
      leftLong: { id: 'top.long' },
    },
  },
  ({ board, leftLong, cut }) => cut.up(sum(board, leftLong)),
)

function pieceOf(
  { figures, cut }: PlanContext,
  { body }: Whole,
  { from, to, joinsOver }: Pick<CounterPiece, 'from' | 'joinsOver'> & { readonly to: Length },
): CounterPiece {
  const spare = figures.length('top.long')
  const joinsLeft = from > 0
  const joinsRight = to < body.back
  const leftEnd = joinsLeft ? nanometres(0) : body.offsetLeft
  const rightEnd = joinsRight ? nanometres(0) : less(sum(body.front, body.offsetLeft), body.back)
  const back = joinsLeft || joinsRight ? pieceBack({ from, to }) : body.back
  const scribed = joinsLeft && joinsRight ? nanometres(0) : spare
  const joined = joinsLeft || joinsRight
  const board = joined ? joinedBoard({ back, leftEnd, rightEnd }) : body.extent
  return {
    from,
    back,
    front: joined ? pieceFront({ back, leftEnd, rightEnd }) : body.front,
    roughLength: pieceRough({ board, leftLong: joined ? scribed : spare, cut }),
    joinsLeft,
    joinsRight,
    joinsOver,
  }
}

interface Joined {
  readonly joints: readonly Length[]
  readonly joinsOver: CounterPiece['joinsOver']
}

/** The sheet is never exceeded; what two people lift is kept where the boxes have a joint for it. */
function jointsFor(context: PlanContext, whole: Whole): Joined {
  const { figures } = context
  const { body, boxJoints } = whole
  const spare = figures.length('top.long')
  const sheet = less(figures.length('sheet.length'), times(figures.length('sheet.trim'), 2))
  const lifted = shortest(sheet, longestForTwo(context, whole))
  if (sum(body.extent, spare) <= lifted) return { joints: [], joinsOver: 'box joints' }
  const from = less(body.x, sum(spare, size(body.offsetLeft)))
  const rightEnd = less(sum(body.front, body.offsetLeft), body.back)
  const to = sum(body.x, body.back, spare, size(rightEnd))
  const points = [from, ...boxJoints.filter((x) => x > body.x && x < sum(body.x, body.back)), to]
  const atBoxes = evenCuts(points, lifted) ?? evenCuts(points, sheet)
  if (atBoxes !== undefined) return { joints: atBoxes, joinsOver: 'box joints' }
  const count = Math.ceil(less(to, from) / sheet)
  const each = over(less(to, from), count)
  return { joints: Array.from({ length: count - 1 }, (_, i) => sum(from, times(each, i + 1))), joinsOver: 'a box' }
}

const MM_PER_METRE = 1000

/** Length of this counter that weighs what two people lift. */
function longestForTwo({ figures, cut }: PlanContext, { roughDepth, thickness }: Whole): Length {
  const perMetre = inMetres(roughDepth) * inMetres(thickness) * figures.number('density.mdf')
  return cut.down(millimetres(Math.floor((figures.number('lift.two') / perMetre) * MM_PER_METRE)))
}

/** Cuts at some of the inner points: the fewest sections no longer than `most`, and of those the most even. */
function evenCuts(points: readonly Length[], most: Length): readonly Length[] | undefined {
  const fewest = cutsWithin(points, most)
  if (fewest === undefined) return undefined
  const spans = points
    .flatMap((a, i) => points.slice(i + 1).map((b) => less(b, a)))
    .filter((span) => span < most)
    .toSorted((a, b) => a - b)
  const evener = spans.find((span) => cutsWithin(points, span)?.length === fewest.length)
  return evener === undefined ? fewest : cutsWithin(points, evener)
}

/** Each cut at the farthest point within reach of the one before; undefined where two neighbours stand too far apart. */
function cutsWithin([from, ...onward]: readonly Length[], most: Length): readonly Length[] | undefined {
  if (from === undefined || onward.length === 0) return []
  const reached = onward.findLastIndex((x) => less(x, from) <= most)
  const cut = onward[reached]
  if (cut === undefined) return undefined
  const rest = cutsWithin(onward.slice(reached), most)
  return rest === undefined || reached === onward.length - 1 ? rest : [cut, ...rest]
}
