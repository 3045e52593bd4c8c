/** One difference between two plans, in words ready to print; `weight` ranks it (larger first). */
export interface Change {
  readonly weight: number
  readonly says: string
  /** Part mark when a part changed. */
  readonly mark?: string
  /** Said in a few words whatever else there is to say: a new stop, a yes to be given. */
  readonly announce?: true
}
