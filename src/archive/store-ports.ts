import type { Clock } from '../ports/clock.ts'
import type { Files } from '../ports/files.ts'
import type { Machine } from '../ports/machine.ts'
import type { RandomId } from '../ports/random-id.ts'

/** What the store asks of the world. */
export interface StorePorts {
  readonly files: Files
  readonly clock: Clock
  readonly randomId: RandomId
  readonly machine: Machine
}
