/** One line of a request to an outside shop. No client data, no prices. */
export interface RequestLine {
  readonly mark: string
  readonly item: string
  readonly size: string
  readonly quantity: number
  readonly details: readonly string[]
  readonly hold: boolean
}
