/** What burns in the opening, and what that asks of the wood round it. */
export interface FuelKind {
  readonly id: string
  readonly says: string
  /** The clearances of the masonry rule apply; otherwise the appliance's manual is asked for. */
  readonly governedBy: 'masonry rule' | 'manual' | 'nothing'
}
