import type { Show } from '../../things/show.ts'
import type { Length } from '../../units/length.ts'
import { pieceName, pieceWords } from './piece-name.ts'
import { cutsThrough, type Direction, extentOf, type SawnPiece, type SawPiece } from './saw-tree.ts'

/** One straight through-cut in the order it is sawn, in words and numbers. */
export interface SawCut {
  readonly number: number
  /** `strip A, 12 3/16 wide: across at 30: L1-S1`. */
  readonly says: string
  readonly direction: Direction
  /** Fence setting: what the cut leaves on the near side. */
  readonly fence: Length
}

/** One line of the printed saw order: a row of cuts through one piece. `strip B, 12 3/16 wide: across 30, 30, B1 18; 17 1/8 is left`. */
export interface SawLine {
  readonly first: number
  readonly last: number
  readonly says: string
}

/** A piece that is sawn on, under the letters the order calls it by; on the trimmed sheet. */
export interface NamedPiece {
  readonly name: string
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
}

export interface SawOrder {
  readonly cuts: readonly SawCut[]
  readonly lines: readonly SawLine[]
  readonly named: readonly NamedPiece[]
}

/** How pieces are called on the saw sheet. */
interface Names {
  readonly show: Show
  readonly markOf: (block: number) => string
  readonly trim: Length
}

const EDGES = 4
const DIRECTION_WORDS: Readonly<Record<Direction, string>> = { across: 'across', along: 'rip' }

/** The cuts of one sheet in sawing order: four edges trimmed, then each piece sawn whole before the next is taken up. */
export function sawOrder(tree: SawPiece, names: Names): SawOrder {
  const trimmed = names.trim > 0 ? trimming(names) : { cuts: [], lines: [], named: [] }
  return tree.kind === 'sawn' ? sawn({ piece: tree, name: '', called: '' }, trimmed, names) : trimmed
}

function trimming({ show, trim }: Names): SawOrder {
  const says = `trim ${show.length(trim)} off`
  const edges = [...Array(EDGES).keys()].map(
    (n): SawCut => ({
      number: n + 1,
      says: `${says} edge ${n + 1}`,
      direction: n < 2 ? 'along' : 'across',
      fence: trim,
    }),
  )
  return { cuts: edges, lines: [{ first: 1, last: EDGES, says: `${says} all four edges` }], named: [] }
}

/** A piece in hand: its letters, and the words that open its line. The sheet itself has neither. */
interface InHand {
  readonly piece: SawnPiece
  readonly name: string
  readonly called: string
}

/** Adds the cuts of one piece, then of those of its pieces that are sawn on. */
function sawn(hand: InHand, before: SawOrder, names: Names): SawOrder {
  const { piece } = hand
  const into = piece.into.filter((child) => child.kind === 'sawn')
  const inHand = into.map((child, n): InHand => {
    const name = pieceName(hand.name, n)
    return {
      piece: child,
      name,
      called: pieceWords(name, piece.direction, names.show.length(extentOf(child, piece.direction))),
    }
  })
  const nameOf = (child: SawPiece) => inHand.find((next) => next.piece === child)?.name
  const here = withRow(hand, nameOf, before, names)
  const named = inHand.map(({ name, piece: { x, y, length, width } }) => ({ name, x, y, length, width }))
  return inHand.reduce<SawOrder>((order, next) => sawn(next, order, names), {
    ...here,
    named: [...here.named, ...named],
  })
}

function withRow(
  { piece, called }: InHand,
  nameOf: (child: SawPiece) => string | undefined,
  before: SawOrder,
  { show, markOf }: Names,
): SawOrder {
  const { direction } = piece
  const first = before.cuts.length + 1
  const words = DIRECTION_WORDS[direction]
  const prefix = called === '' ? '' : `${called}: `
  const sized = (child: SawPiece) => {
    const extent = extentOf(child, direction)
    return extent === 0 ? 'a sliver' : [nameOf(child), show.length(extent)].filter(Boolean).join(' ')
  }
  const freed = piece.into.slice(0, cutsThrough(piece))
  const cuts = freed.map((child, n): SawCut => {
    const what = child.kind === 'part' ? markOf(child.block) : nameOf(child)
    const fence = extentOf(child, direction)
    const says = `${prefix}${words} at ${show.length(fence)}${what === undefined ? '' : `: ${what}`}`
    return { number: first + n, says, direction, fence }
  })
  const left = piece.into[cutsThrough(piece)]
  const rest = left === undefined ? 'nothing is left' : `${sized(left)} is left`
  const says = `${prefix}${words} ${freed.map(sized).join(', ')}; ${rest}`
  const line = { first, last: first + cuts.length - 1, says }
  return { ...before, cuts: [...before.cuts, ...cuts], lines: [...before.lines, line] }
}
