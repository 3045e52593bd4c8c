/** One difference between two plans, in words ready to print; `weight` ranks it (larger first). */
export interface Change {
  readonly weight: number
  readonly says: string
  /** Part mark when a part changed. */
  readonly mark?: string
}
