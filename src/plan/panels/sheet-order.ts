import { formula, within } from '../../things/formula.ts'
import type { Sheet } from '../../things/material.ts'
import type { Part } from '../../things/part.ts'
import type { PlanContext } from '../context.ts'
import { bedOf, blockOf, type Layout, piecesOf, type Sawing } from './layout.ts'
import { fewestSheets, sheetBound } from './sheet-bound.ts'

/** How many sheets of one material are ordered: those of the layouts and the spare; and the least any layout could need. */
export interface SheetOrder {
  readonly sheets: number
  readonly spare: number
  readonly bound: number
}

/** Sheets the search laid the pieces out on. */
export const sheetsLaid = formula(
  {
    id: 'panels.laid',
    plain: 'sheets the pieces are laid out on, found by search; never fewer than the fewest possible',
    source: 'geometry',
    gives: 'count',
    from: { fewest: sheetBound },
    units: { pieces: 'count', fewest: 'count' },
  },
  (of: { readonly layouts: readonly Layout[]; readonly pieces: number; readonly fewest: number }): number =>
    of.layouts.length,
)

/** One sheet more where many are cut: a slip of the saw then stops nobody. */
export const spareSheets = formula(
  {
    id: 'panels.spare',
    plain: '1 when more sheets are laid out than need no spare',
    source: 'common practice, no source',
    gives: 'count',
    from: { laid: sheetsLaid, noSpareUpTo: { id: 'sheets.spare-above' } },
    units: { noSpareUpTo: 'count' },
  },
  (of: { readonly laid: number; readonly noSpareUpTo: number }): number => (of.laid > of.noSpareUpTo ? 1 : 0),
)

export const sheetsToOrder = formula(
  {
    id: 'panels.sheets',
    plain: 'sheets laid out + spare',
    source: 'arithmetic',
    gives: 'count',
    from: { laid: sheetsLaid, spare: spareSheets },
  },
  (of: { readonly laid: number; readonly spare: number }): number => of.laid + of.spare,
)

/** What is ordered of one material. */
export const orderOf = (
  { material, parts }: { readonly material: Sheet; readonly parts: readonly Part[] },
  all: readonly Layout[],
  { figures }: PlanContext,
  sawing: Sawing,
): SheetOrder =>
  within(material.id, () => {
    const layouts = all.filter((layout) => layout.material.id === material.id)
    const blocks = piecesOf(parts).map((part, id) => blockOf(part, id, sawing.kerf))
    const bound = fewestSheets({ blocks, bed: bedOf(material, sawing) })
    const laid = sheetsLaid({ layouts, pieces: blocks.length, fewest: bound })
    const spare = spareSheets({ laid, noSpareUpTo: figures.number('sheets.spare-above') })
    return { sheets: sheetsToOrder({ laid, spare }), spare, bound }
  })
