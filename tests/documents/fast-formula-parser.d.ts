/** The package carries no types; only what the tests call is declared. */
declare module 'fast-formula-parser' {
  interface CellRef {
    readonly sheet: string
    readonly row: number
    readonly col: number
  }
  interface RangeRef {
    readonly sheet: string
    readonly from: { readonly row: number; readonly col: number }
    readonly to: { readonly row: number; readonly col: number }
  }
  type Value = number | string | null
  export default class FormulaParser {
    constructor(around: {
      readonly functions?: Readonly<Record<string, (...values: readonly { readonly value: number }[]) => number>>
      readonly onCell: (ref: CellRef) => Value
      readonly onRange: (ref: RangeRef) => readonly (readonly Value[])[]
    })
    parse(formula: string, at: CellRef): unknown
  }
}
