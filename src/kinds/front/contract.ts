/** What the rest of the plan asks of a kind of door or drawer front. */
export interface FrontKind {
  readonly id: string
  readonly says: string
}
