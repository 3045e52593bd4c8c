import type { ExitCode } from './exit-code.ts'
import type { Surroundings } from './surroundings.ts'

/** What stood behind a command. */
export interface Given {
  readonly files: readonly string[]
  readonly out: string | undefined
  readonly json: boolean
}

export type Option = 'out' | 'json'

/** One command: how it is written, what it does, what may stand behind it. */
export interface Command {
  readonly use: string
  readonly says: string
  readonly files: 0 | 1
  readonly options: readonly Option[]
  readonly needs: readonly Option[]
  readonly run: (given: Given, surroundings: Surroundings) => Promise<ExitCode | number>
}
