import { formula } from '../../things/formula.ts'
import type { Bed, Block } from './block.ts'

/**
 * The fewest sheets any layout can need, by area: ⌈Σ(length + kerf)(width + kerf) / (sheet length + kerf)(sheet width + kerf)⌉.
 * Blocks and bed already carry their kerf. Exact: the areas are whole numbers of nm², past 2^53.
 */
export const fewestSheets = formula(
  {
    id: 'panels.fewest-sheets',
    plain:
      '(sum of (length + kerf) × (width + kerf)) / ((usable length + kerf) × (usable width + kerf)), up to a whole sheet',
    source: 'geometry',
  },
  (given: { readonly blocks: readonly Block[]; readonly bed: Bed }): number => {
    const area = (r: Bed) => BigInt(r.length) * BigInt(r.width)
    const whole = given.blocks.reduce((total, block) => total + area(block), 0n)
    const sheet = area(given.bed)
    return Number((whole + sheet - 1n) / sheet)
  },
)
