import { describe, expect, it } from 'vitest'
import { createStore } from '../../src/archive/store.ts'
import { DiskProblem } from '../../src/things/failure.ts'
import { fixedPorts } from '../ports/fixed.ts'
import { memoryFiles, type Operation, systemError } from '../ports/memory-files.ts'
import { JOB_ID, keptJob, stateOf } from './jobs.ts'

const KINDS: readonly Operation['kind'][] = [
  'open',
  'write',
  'flush',
  'close',
  'rename',
  'flush-folder',
  'remove',
  'make-folder',
]
const CODES = [
  'ENOSPC',
  'EDQUOT',
  'EROFS',
  'EACCES',
  'EPERM',
  'EIO',
  'EMFILE',
  'ENOENT',
  'EXDEV',
  'ENAMETOOLONG',
] as const

/** Every operation × every error a disk may give it. */
const table = KINDS.flatMap((kind) => CODES.map((code) => ({ kind, code })))

describe('a disk that refuses', () => {
  it.each(table)('$kind fails with $code: the saves before it stay, and the next one works', async ({ kind, code }) => {
    let failing = false
    let failed = 0
    const files = memoryFiles(undefined, (operation) => {
      if (!failing || operation.kind !== kind) return undefined
      failed++
      return systemError(code)
    })
    const store = createStore(fixedPorts(files, { pid: 5000 }), '/data')
    for (const nth of [0, 1, 2, 3, 4]) await store.save(keptJob(nth))
    failing = true
    const saved = await store.save(keptJob(5)).then(
      () => true,
      (error: unknown) => {
        expect(error).toBeInstanceOf(DiskProblem)
        expect(String(error)).toMatch(/Could not write .*: /)
        return false
      },
    )
    failing = false
    // Tidying up old saves, and a folder that is there already, do not stand in the way of a save.
    expect(saved, `${failed} refused`).toBe(kind === 'remove' || kind === 'make-folder')
    const reopened = createStore(fixedPorts(memoryFiles(files.disk()), { pid: 5001 }), '/data')
    expect(stateOf((await reopened.load(JOB_ID)).kept)).toBe(saved ? 5 : 4)
    await store.save(keptJob(6))
    const again = createStore(fixedPorts(memoryFiles(files.disk()), { pid: 5002 }), '/data')
    const { kept, notes } = await again.load(JOB_ID)
    expect(stateOf(kept)).toBe(6)
    expect(notes).toEqual([])
  })

  // PostgreSQL wiki, "Fsync Errors"; Rebello et al., USENIX ATC 2020: after a failed flush a second one may report success with the data gone.
  it('never flushes the same file again after a flush that failed', async () => {
    let failing = true
    const files = memoryFiles(undefined, (operation) =>
      operation.kind === 'flush' && failing ? systemError('EIO') : undefined,
    )
    const store = createStore(fixedPorts(files, { pid: 5000 }), '/data')
    await expect(store.save(keptJob(0))).rejects.toThrow(DiskProblem)
    failing = false
    await store.save(keptJob(0))
    const flushed = files.operations.filter((operation) => operation.kind === 'flush')
    const opened = files.operations.filter(
      (operation) => operation.kind === 'open' && operation.path.includes('.saving-'),
    )
    expect(flushed).toHaveLength(1)
    expect(opened).toHaveLength(2)
    expect(opened[1]).toMatchObject({ inode: flushed[0]?.kind === 'flush' ? flushed[0].inode : -1 })
  })
})
