import { type Length, nanometres } from '../../units/length.ts'
import { comparedArea, type Spot } from './block.ts'

/** Across the sheet's length (the cut stands square to it), or along it (a rip). */
export type Direction = 'across' | 'along'

interface Rectangle {
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
}

/** A piece of sheet as the saw makes it: a finished part, waste, or something sawn further. Sizes without kerf. */
export type SawPiece = Rectangle &
  (
    | { readonly kind: 'part'; readonly block: number }
    | { readonly kind: 'waste' }
    | { readonly kind: 'sawn'; readonly direction: Direction; readonly into: readonly SawPiece[] }
  )

export type SawnPiece = Extract<SawPiece, { kind: 'sawn' }>

/** The saw: what a cut takes, and what decides the first cut. */
export interface Saw {
  readonly kerf: number
  readonly first: 'across' | 'largest-waste'
}

/**
 * How a sheet is sawn: the tree of its through-cuts, found from where the parts lie, whoever laid them.
 * `first` says what decides where both directions are possible: the cut across where it parts the parts (a heavy sheet
 * is shortened before it is ripped), or the larger piece of waste left whole.
 * Undefined when through-cuts alone cannot free every part.
 */
export function sawTree(spots: readonly Spot[], whole: Rectangle, saw: Saw): SawPiece | undefined {
  const [first] = spots
  if (first === undefined) return { ...rectangle(whole), kind: 'waste' }
  if (spots.length === 1 && fillsWhole(first, whole)) return { ...rectangle(whole), kind: 'part', block: first.block }
  const ways = (['across', 'along'] as const).map((direction) => sawnInto(spots, whole, saw, direction))
  const [across, along] = ways
  if (across === undefined || along === undefined) return across ?? along
  if (saw.first === 'across' && shortens(across)) return across
  return largestWaste(along) > largestWaste(across) ? along : across
}

function sawnInto(spots: readonly Spot[], whole: Rectangle, saw: Saw, direction: Direction): SawPiece | undefined {
  const axis = AXES[direction]
  const strips = stripsOf(spots, whole, saw.kerf, direction)
  const [only] = strips
  if (strips.length === 1 && only !== undefined && only.extent === whole[axis.size]) return undefined
  const into = strips.map((strip) => {
    const piece = { ...rectangle(whole), [axis.from]: strip.from, [axis.size]: strip.extent }
    return sawTree(strip.spots, piece, saw)
  })
  return into.every((piece) => piece !== undefined) ? { ...rectangle(whole), kind: 'sawn', direction, into } : undefined
}

const AXES = { across: { from: 'x', size: 'length' }, along: { from: 'y', size: 'width' } } as const

interface Strip {
  readonly from: number
  readonly extent: number
  readonly spots: readonly Spot[]
}

/** The strips that full cuts in one direction part the piece into, waste at either end and between included. */
function stripsOf(spots: readonly Spot[], whole: Rectangle, kerf: number, direction: Direction): readonly Strip[] {
  const { from, size } = AXES[direction]
  const strips: Strip[] = []
  let at = whole[from]
  let open: Strip | undefined
  const close = () => {
    if (open === undefined) return
    strips.push(open)
    at = open.from + open.extent + kerf
  }
  for (const spot of spots.toSorted((a, b) => a[from] - b[from])) {
    if (open !== undefined && spot[from] < open.from + open.extent + kerf) {
      const extent = Math.max(open.from + open.extent, spot[from] + spot[size]) - open.from
      open = { from: open.from, extent, spots: [...open.spots, spot] }
      continue
    }
    close()
    // A part that stands off the edge: what is before it is sawn off, be it a sliver that the kerf eats.
    if (spot[from] > at) strips.push({ from: at, extent: Math.max(0, spot[from] - kerf - at), spots: [] })
    open = { from: spot[from], extent: spot[size], spots: [spot] }
  }
  close()
  const end = whole[from] + whole[size]
  return end > at ? [...strips, { from: at, extent: end - at, spots: [] }] : strips
}

/** Whether a first cut leaves two pieces to saw on with, and not only an end taken off. */
const shortens = (piece: SawPiece): boolean =>
  piece.kind === 'sawn' && piece.into.filter((p) => p.kind !== 'waste').length > 1

const rectangle = ({ x, y, length, width }: Rectangle): Rectangle => ({ x, y, length, width })

const fillsWhole = (spot: Spot, whole: Rectangle): boolean =>
  spot.x === whole.x && spot.y === whole.y && spot.length === whole.length && spot.width === whole.width

function largestWaste(piece: SawPiece): number {
  if (piece.kind === 'sawn') return piece.into.reduce((most, p) => Math.max(most, largestWaste(p)), 0)
  return piece.kind === 'waste' ? comparedArea(piece) : 0
}

/** Every piece of one kind at the ends of the tree. */
export function leavesOf(piece: SawPiece, kind: 'part' | 'waste'): readonly SawPiece[] {
  if (piece.kind === 'sawn') return piece.into.flatMap((p) => leavesOf(p, kind))
  return piece.kind === kind && piece.length > 0 && piece.width > 0 ? [piece] : []
}

/** How many cuts free the pieces of a row: one follows each piece but the one that ends where the sawn piece ends. */
export function cutsThrough(piece: SawnPiece): number {
  const last = piece.into.at(-1)
  const ends = last !== undefined && endOf(last, piece.direction) === endOf(piece, piece.direction)
  return ends ? piece.into.length - 1 : piece.into.length
}

const endOf = (piece: Rectangle, direction: Direction): number =>
  direction === 'across' ? piece.x + piece.length : piece.y + piece.width

/** A piece's size in the direction in which its row was measured off. */
export const extentOf = (piece: Rectangle, direction: Direction): Length =>
  nanometres(direction === 'across' ? piece.length : piece.width)
