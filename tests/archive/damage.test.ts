import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readSave } from '../../src/archive/save-file.ts'
import { createStore } from '../../src/archive/store.ts'
import { fixedPorts } from '../ports/fixed.ts'
import { memoryFiles } from '../ports/memory-files.ts'
import { JOB_ID, keptJob, stateOf } from './jobs.ts'

const FOLDER = `/data/jobs/${JOB_ID}`

async function twoSaves() {
  const files = memoryFiles()
  const store = createStore(fixedPorts(files), '/data')
  await store.save(keptJob(0))
  await store.save(keptJob(1))
  const [first = '', second = ''] = [...files.disk().files.keys()].filter((path) => path.endsWith('.job')).sort()
  return { disk: files.disk(), first, second }
}

type Damage = (bytes: Uint8Array, other: Uint8Array) => Uint8Array
const damages: fc.Arbitrary<Damage> = fc.oneof(
  fc.tuple(fc.nat(), fc.integer({ min: 0, max: 7 })).map(
    ([at, bit]): Damage =>
      (bytes) =>
        bytes.map((byte, i) => (i === at % bytes.length ? byte ^ (1 << bit) : byte)),
  ),
  fc.integer({ min: 0, max: 99 }).map(
    (share): Damage =>
      (bytes) =>
        bytes.slice(0, Math.floor((bytes.length * share) / 100)),
  ),
  fc.nat().map(
    (from): Damage =>
      (bytes) =>
        bytes.map((byte, i) => (i >= from % bytes.length ? 0 : byte)),
  ),
  fc.constant<Damage>((bytes, other) =>
    Uint8Array.from([...bytes.slice(0, bytes.length / 2), ...other.slice(other.length / 2)]),
  ),
  fc.uint8Array({ maxLength: 400 }).map(
    (garbage): Damage =>
      () =>
        garbage,
  ),
)

describe('a damaged save', () => {
  it('is noticed whatever happened to it, set aside under a new name, and the save before it is back', async () => {
    const { disk, first, second } = await twoSaves()
    await fc.assert(
      fc.asyncProperty(damages, async (damage) => {
        const bytes = damage(disk.files.get(second) ?? new Uint8Array(), disk.files.get(first) ?? new Uint8Array())
        fc.pre(typeof readSave(bytes) === 'string')
        const files = memoryFiles({ ...disk, files: new Map(disk.files).set(second, bytes) })
        const { kept, notes } = await createStore(fixedPorts(files, { pid: 200 }), '/data').load(JOB_ID)
        expect(stateOf(kept)).toBe(0)
        expect(notes.join()).toContain('was damaged')
        expect(files.disk().files.get(`${second}.damaged`)).toEqual(bytes)
        expect(files.disk().files.has(second)).toBe(false)
      }),
      { numRuns: 1000 },
    )
  })

  it('never passes for a whole one: any change of one bit is noticed', async () => {
    const { disk, second } = await twoSaves()
    const bytes = disk.files.get(second) ?? new Uint8Array()
    for (let at = 0; at < bytes.length; at++) {
      const changed = bytes.slice()
      changed[at] = (changed[at] ?? 0) ^ 4
      expect(readSave(changed), `byte ${at}`).toBeTypeOf('string')
    }
  })

  it('is noticed when a folder stands in place of the file', async () => {
    const { disk, second } = await twoSaves()
    const left = new Map(disk.files)
    left.delete(second)
    const files = memoryFiles({ folders: new Set([...disk.folders, second]), files: left })
    expect(stateOf((await createStore(fixedPorts(files, { pid: 200 }), '/data').load(JOB_ID)).kept)).toBe(0)
  })

  it('hides no other job, and is listed as damaged', async () => {
    const { disk, first, second } = await twoSaves()
    const files = memoryFiles({
      ...disk,
      files: new Map(disk.files).set(first, new Uint8Array()).set(second, new Uint8Array()),
    })
    const store = createStore(fixedPorts(files, { pid: 200 }), '/data')
    await store.save(keptJob(3, 'other'))
    expect(await store.list()).toEqual([
      { id: 'other', title: 'state 3', at: 'job.units', answers: 1, damaged: false },
      { id: JOB_ID, title: JOB_ID, at: undefined, answers: 0, damaged: true },
    ])
    await expect(store.load(JOB_ID)).rejects.toThrow('no save of this job can be read')
    expect(files.disk().folders.has(FOLDER)).toBe(true)
  })
})
