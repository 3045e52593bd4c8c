import { formula } from '../../things/formula.ts'
import { squareMetres } from '../../units/area.ts'
import type { Bed, Block } from './block.ts'

/**
 * The fewest sheets any layout can need, by area: ⌈Σ(length + kerf)(width + kerf) / (usable length + kerf)(usable width + kerf)⌉.
 * Blocks and bed already carry their kerf. Exact: the areas are whole numbers of nm², past 2^53; those in m² are for reading.
 */
export const sheetBound = formula(
  {
    id: 'panels.bound',
    plain: 'area of the pieces, a saw cut added to each side / usable area of a sheet likewise, up to a whole sheet',
    source: 'geometry',
    gives: 'count',
    units: { pieces: 'count', pieceArea: 'area', usableArea: 'area' },
  },
  (given: Laying & { readonly pieces: number; readonly pieceArea: number; readonly usableArea: number }): number => {
    const whole = given.blocks.reduce((total, block) => total + areaOf(block), 0n)
    const sheet = areaOf(given.bed)
    return Number((whole + sheet - 1n) / sheet)
  },
)

interface Laying {
  readonly blocks: readonly Block[]
  readonly bed: Bed
}

/** The bound for blocks to be laid on beds. */
export const fewestSheets = ({ blocks, bed }: Laying): number =>
  sheetBound({
    blocks,
    bed,
    pieces: blocks.length,
    pieceArea: blocks.reduce((total, block) => total + inSquareMetres(block), 0),
    usableArea: inSquareMetres(bed),
  })

const areaOf = (r: Bed): bigint => BigInt(r.length) * BigInt(r.width)

const NM_PER_METRE = 1e9
const inSquareMetres = (r: Bed): number => squareMetres((r.length / NM_PER_METRE) * (r.width / NM_PER_METRE))
