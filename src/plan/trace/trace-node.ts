/** What a number rests on, in one word: a reader sees at once what he could change. */
export type Standing =
  | 'rule'
  | 'practice'
  | 'geometry'
  | 'figure'
  | 'your setting'
  | 'answered'
  | 'suggested'
  | 'assumed'
  | 'given'

/** One number with the numbers it was come by, as a person reads it. */
export interface TraceNode {
  /** What it is called where it is used: `inside width`. */
  readonly name: string
  /** Id of the formula, question or figure; empty for a number that is simply given. */
  readonly id: string
  /** What it is about, in words: `box L2`, `left alcove`; empty for the whole job. */
  readonly about: string
  readonly value: string
  readonly standing: Standing
  /** The formula in plain notation, or what the question or figure is. */
  readonly plain: string
  /** Citation, `geometry`, `common practice, no source`, or the reason of a suggestion; empty when there is none to give. */
  readonly source: string
  readonly inputs: readonly TraceNode[]
  /** Shown with its inputs further up already. */
  readonly again?: true
}

/** What was asked about: a part, a total, a question, with a number or several. */
export interface Trace {
  readonly title: string
  /** What there is to say besides numbers: where a part goes, what it waits for. */
  readonly says: readonly string[]
  readonly nodes: readonly TraceNode[]
}
