/** What became of a typed answer. */
export type Entered =
  | {
      readonly kind: 'answer'
      /** The answer to keep; undefined takes an earlier answer out, so that the suggestion counts again. */
      readonly value: unknown
      /** What was understood, in the job's unit: `41 1/4 in`. */
      readonly echo: string
      /** Worth knowing, e.g. that control characters were taken out. */
      readonly note?: string
    }
  /** Probably a slip: a second Enter takes `value`. */
  | { readonly kind: 'held'; readonly value: unknown; readonly echo: string; readonly says: string }
  | Refused

export interface Refused {
  readonly kind: 'refused'
  readonly says: string
}

export const answer = (value: unknown, echo: string, note?: string): Entered => ({
  kind: 'answer',
  value,
  echo,
  ...(note === undefined ? {} : { note }),
})

export const refused = (says: string): Refused => ({ kind: 'refused', says })

export const held = (value: unknown, echo: string, says: string): Entered => ({ kind: 'held', value, echo, says })
