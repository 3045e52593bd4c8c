import type { Show } from '../../things/show.ts'
import { type Length, nanometres } from '../../units/length.ts'
import type { Direction, SawPiece } from './saw-tree.ts'

/** One straight through-cut in the order it is sawn, in words and numbers. */
export interface SawCut {
  readonly number: number
  /** `across at 30: L1-S1`. */
  readonly says: string
  readonly direction: Direction
  /** Fence setting: what the cut leaves on the near side. */
  readonly fence: Length
}

/** One line of the printed saw order: a row of cuts through one piece. `5 to 7: across: 30, 30, 18; 17 1/8 is left`. */
export interface SawLine {
  readonly first: number
  readonly last: number
  readonly says: string
}

export interface SawOrder {
  readonly cuts: readonly SawCut[]
  readonly lines: readonly SawLine[]
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
  const trimmed = names.trim > 0 ? trimming(names) : { cuts: [], lines: [] }
  return sawn(tree, '', trimmed, names)
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
  return { cuts: edges, lines: [{ first: 1, last: EDGES, says: `${says} all four edges` }] }
}

/** Adds the cuts of one piece, then of the pieces it falls into. */
function sawn(piece: SawPiece, name: string, before: SawOrder, names: Names): SawOrder {
  if (piece.kind !== 'sawn') return before
  const here = withRow(piece, name, before, names)
  return piece.into.reduce((order, child, at) => sawn(child, nameOf(piece, at, name, names), order, names), here)
}

type Sawn = Extract<SawPiece, { kind: 'sawn' }>

function withRow(piece: Sawn, name: string, before: SawOrder, names: Names): SawOrder {
  const number = before.cuts.length + 1
  const words = DIRECTION_WORDS[piece.direction]
  const prefix = name === '' ? '' : `${name}: `
  const cuts = piece.into.slice(0, cutsThrough(piece)).map((child, n): SawCut => {
    const size = names.show.length(extentOf(child, piece.direction))
    const what = child.kind === 'part' ? `: ${names.markOf(child.block)}` : ''
    return {
      number: number + n,
      says: `${prefix}${words} at ${size}${what}`,
      direction: piece.direction,
      fence: extentOf(child, piece.direction),
    }
  })
  const sizes = cuts.map((cut) => names.show.length(cut.fence)).join(', ')
  const line = {
    first: number,
    last: number + cuts.length - 1,
    says: `${prefix}${words} ${sizes}${rest(piece, names)}`,
  }
  return { cuts: [...before.cuts, ...cuts], lines: [...before.lines, line] }
}

/** A cut follows each piece but the one that ends where the sawn piece ends. */
function cutsThrough(piece: Sawn): number {
  const last = piece.into.at(-1)
  const ends = last !== undefined && endOf(last, piece.direction) === endOf(piece, piece.direction)
  return ends ? piece.into.length - 1 : piece.into.length
}

const rest = (piece: Sawn, { show }: Names): string => {
  const left = piece.into.at(cutsThrough(piece))
  return left === undefined ? '; nothing is left' : `; ${show.length(extentOf(left, piece.direction))} is left`
}

const extentOf = (piece: SawPiece, direction: Direction): Length =>
  nanometres(direction === 'across' ? piece.length : piece.width)

const endOf = (piece: SawPiece, direction: Direction): number =>
  direction === 'across' ? piece.x + piece.length : piece.y + piece.width

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'] as const

/** `first 30`, or `the 18` when no other piece of the row has its size; with what it was sawn from. */
function nameOf(from: Sawn, at: number, parent: string, { show }: Names): string {
  const sizes = from.into.map((p) => extentOf(p, from.direction))
  const size = sizes[at]
  if (size === undefined) return parent
  const same = sizes.filter((s) => s === size).length
  const order = sizes.slice(0, at).filter((s) => s === size).length
  const own = `${same === 1 ? 'the' : (ORDINALS[order] ?? `${order + 1}th`)} ${show.length(size)}`
  return parent === '' ? own : `${own} of ${parent}`
}
