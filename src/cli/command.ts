import type { ExitCode } from './exit-code.ts'
import type { Surroundings } from './surroundings.ts'

/** What stood behind a command. */
export interface Given {
  readonly files: readonly string[]
  /** Words behind the files: a mark, a total. */
  readonly words: readonly string[]
  readonly out: string | undefined
  readonly json: boolean
  /** Reckon with the figures in the person's folder as they are now, instead of those the job carries. */
  readonly ownFigures: boolean
  /** The id of one figure. */
  readonly where: string | undefined
  /** Answers changed for this once: `QUESTION=ANSWER`. */
  readonly with: readonly string[]
}

export type Option = 'out' | 'json' | 'own-figures' | 'where' | 'with'

/** One command: how it is written, what it does, what may stand behind it. */
export interface Command {
  readonly use: string
  readonly says: string
  readonly files: 0 | 1
  /** Files there may be besides. */
  readonly moreFiles?: 1
  /** What the words behind the files are, of a command that takes some. */
  readonly words?: string
  readonly options: readonly Option[]
  readonly needs: readonly Option[]
  readonly run: (given: Given, surroundings: Surroundings) => Promise<ExitCode | number>
}
