import { createStore } from '../../src/archive/store.ts'
import { nodeClock } from '../../src/ports/node/clock.ts'
import { nodeFiles } from '../../src/ports/node/files.ts'
import { nodeMachine } from '../../src/ports/node/machine.ts'
import { nodeRandomId } from '../../src/ports/node/random-id.ts'
import { JOB_ID, keptJob, stateOf } from './jobs.ts'

// Saves state after state of a job until it is killed; prints each number once the save has resolved.
const store = createStore(
  { files: nodeFiles, clock: nodeClock, randomId: nodeRandomId, machine: nodeMachine() },
  process.argv[2] ?? '.',
)
const known = await store.list()
let next = known.length === 0 ? 0 : stateOf((await store.load(JOB_ID)).kept) + 1
for (;;) {
  await store.save(keptJob(next))
  process.stdout.write(`${next}\n`)
  next++
}
