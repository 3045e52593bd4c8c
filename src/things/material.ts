import type { Length } from '../units/length.ts'

export type MaterialId = string

/** A panel or a stick the shop cuts from. Liquids and hardware are `Supplies`. */
export type Material = Sheet | Stick

export interface Sheet {
  readonly kind: 'sheet'
  readonly id: MaterialId
  /** As asked for at the counter: `MDF 3/4 in, double-refined`. */
  readonly name: string
  readonly thickness: Length
  readonly sheetLength: Length
  readonly sheetWidth: Length
  /** kg/m³ */
  readonly density: number
  readonly grain: boolean
}

export interface Stick {
  readonly kind: 'stick'
  readonly id: MaterialId
  readonly name: string
  readonly width: Length
  readonly thickness: Length
  readonly stockLength: Length
  readonly density: number
}
