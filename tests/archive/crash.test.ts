import { describe, expect, it } from 'vitest'
import { createStore } from '../../src/archive/store.ts'
import { disksAfterCrash } from '../ports/crash.ts'
import { fixedPorts } from '../ports/fixed.ts'
import { type Disk, EMPTY_DISK, memoryFiles, type Operation } from '../ports/memory-files.ts'
import { JOB_ID, keptJob, stateOf } from './jobs.ts'

/** Saves states in turn on a recording disk; notes how many operations were done when each was reported as saved. */
async function recorded(start: Disk, states: readonly number[]) {
  const files = memoryFiles(start)
  const store = createStore(fixedPorts(files), '/data')
  if (start !== EMPTY_DISK) await store.load(JOB_ID)
  const acknowledged: { readonly after: number; readonly state: number }[] = []
  for (const state of states) {
    await store.save(keptJob(state))
    acknowledged.push({ after: files.operations.length, state })
  }
  return { operations: files.operations, acknowledged, end: files.disk() }
}

async function tryEachCrash(
  start: Disk,
  operations: readonly Operation[],
  acknowledged: readonly { after: number; state: number }[],
  before: number,
) {
  let states = 0
  for (let count = 0; count <= operations.length; count++) {
    const least = Math.max(before, ...acknowledged.filter((a) => a.after <= count).map((a) => a.state))
    for (const disk of disksAfterCrash(start, operations, count)) {
      states++
      const store = createStore(fixedPorts(memoryFiles(disk), { pid: 200 }), '/data')
      const found = await store.load(JOB_ID).then(
        ({ kept }) => stateOf(kept),
        () => -1,
      )
      if (found < least)
        expect.fail(`Cut after operation ${count}: state ${least} was reported as saved, ${found} is there.`)
    }
  }
  return states
}

// The states a power cut may leave, enumerated as ALICE does it (Pillai et al., OSDI 2014).
describe('a power cut at any moment', () => {
  it('loses no answer that was reported as saved: the first three saves of a job', async () => {
    const { operations, acknowledged } = await recorded(EMPTY_DISK, [0, 1, 2])
    expect(await tryEachCrash(EMPTY_DISK, operations, acknowledged, -1)).toBeGreaterThan(300)
  })

  it('loses none while old saves are being removed', async () => {
    const { end } = await recorded(EMPTY_DISK, [0, 1, 2, 3, 4])
    const { operations, acknowledged } = await recorded(end, [5, 6, 7, 8, 9, 10, 11, 12, 13, 14])
    expect(operations.some((operation) => operation.kind === 'remove')).toBe(true)
    expect(await tryEachCrash(end, operations, acknowledged, 4)).toBeGreaterThan(1000)
  })

  it('would be noticed here if the flush of the data or of the folder were left out', async () => {
    const { operations, acknowledged } = await recorded(EMPTY_DISK, [0, 1, 2])
    for (const left of ['flush', 'flush-folder'] as const) {
      const without = operations.filter((operation) => operation.kind !== left)
      const shifted = acknowledged.map((a) => ({
        ...a,
        after: operations.slice(0, a.after).filter((o) => o.kind !== left).length,
      }))
      await expect(tryEachCrash(EMPTY_DISK, without, shifted, -1), left).rejects.toThrow('was reported as saved')
    }
  })
})
