import { describe, expect, it } from 'vitest'
import { LOCK_NAME } from '../../src/archive/job-lock.ts'
import { readSaveName } from '../../src/archive/save-file.ts'
import { createStore } from '../../src/archive/store.ts'
import { InputUnreadable } from '../../src/things/failure.ts'
import { fixedPorts } from '../ports/fixed.ts'
import { type MemoryFiles, memoryFiles } from '../ports/memory-files.ts'
import { JOB_ID, keptJob, stateOf } from './jobs.ts'

const FOLDER = `/data/jobs/${JOB_ID}`
const saveNames = (files: MemoryFiles, folder = FOLDER) =>
  [...files.disk().files.keys()]
    .filter((path) => path.startsWith(`${folder}/`))
    .map((path) => path.slice(folder.length + 1))
    .filter((name) => readSaveName(name) !== undefined)

describe('the store of jobs', () => {
  it('gives back the last save, with its undo steps and the question the person was at', async () => {
    const files = memoryFiles()
    const store = createStore(fixedPorts(files), '/data')
    for (const nth of [0, 1, 2]) await store.save(keptJob(nth))
    const { kept, notes } = await createStore(fixedPorts(files), '/data').load(JOB_ID)
    expect(kept).toEqual(keptJob(2))
    expect(notes).toEqual([])
  })

  it('writes each save as a new file: temporary, all bytes, flush, close, rename, flush of the folder, in this order', async () => {
    const files = memoryFiles()
    const store = createStore(fixedPorts(files), '/data')
    await store.save(keptJob(0))
    const before = files.operations.length
    await store.save(keptJob(1))
    expect(files.operations.slice(before).map((operation) => operation.kind)).toEqual([
      'open',
      'write',
      'flush',
      'close',
      'rename',
      'flush-folder',
    ])
    expect(saveNames(files)).toHaveLength(2)
  })

  it('saves one after the other when two are asked for at once', async () => {
    const files = memoryFiles()
    const store = createStore(fixedPorts(files), '/data')
    await Promise.all([0, 1, 2, 3].map((nth) => store.save(keptJob(nth))))
    expect(saveNames(files)).toHaveLength(4)
    expect(stateOf((await store.load(JOB_ID)).kept)).toBe(3)
  })

  it('keeps the last five saves and one for each of seven days', async () => {
    const files = memoryFiles()
    let hour = 0
    const minute = () =>
      `2026-11-${String(1 + Math.floor(hour / 4)).padStart(2, '0')}T${String(6 + (hour % 4)).padStart(2, '0')}:00Z`
    const store = createStore(fixedPorts(files, { minute }), '/data')
    // Four saves a day for ten days.
    for (; hour < 40; hour++) await store.save(keptJob(hour))
    const numbers = saveNames(files)
      .map((name) => readSaveName(name)?.number)
      .sort((a, b) => Number(a) - Number(b))
    expect(numbers).toEqual([16, 20, 24, 28, 32, 36, 37, 38, 39, 40])
  })

  it('lists jobs latest saved first, with title, place and count of answers', async () => {
    const files = memoryFiles()
    await createStore(fixedPorts(files, { minute: () => '2026-11-24T08:00Z' }), '/data').save(keptJob(0, 'older'))
    await createStore(fixedPorts(files), '/data').save(keptJob(5, 'newer'))
    expect(await createStore(fixedPorts(files), '/data').list()).toEqual([
      { id: 'newer', title: 'state 5', at: 'job.units', answers: 1, damaged: false },
      { id: 'older', title: 'state 0', at: 'job.units', answers: 1, damaged: false },
    ])
  })

  it('is empty where nothing was saved, and says so when such a job is asked for', async () => {
    const store = createStore(fixedPorts(memoryFiles()), '/data')
    expect(await store.list()).toEqual([])
    await expect(store.load('none-here')).rejects.toThrow(InputUnreadable)
  })

  it('keeps what two windows save from the same state, and tells the next one to open the job', async () => {
    const files = memoryFiles()
    await createStore(fixedPorts(files), '/data').save(keptJob(0))
    const [one, two] = [
      createStore(fixedPorts(files, { pid: 200 }), '/data'),
      createStore(fixedPorts(files, { pid: 300 }), '/data'),
    ]
    await one.load(JOB_ID)
    const { notes } = await two.load(JOB_ID)
    expect(notes.join()).toContain('open in another window')
    await one.save(keptJob(1))
    await two.save(keptJob(2))
    const opened = await createStore(fixedPorts(files, { pid: 400 }), '/data').load(JOB_ID)
    expect(stateOf(opened.kept)).toBe(2)
    expect(opened.notes.join()).toContain('also saved in another window')
    expect([...files.disk().files.keys()].filter((path) => path.includes('.job'))).toHaveLength(3)
  })

  it('takes no notice of a lock whose process is gone or whose computer was started again', async () => {
    const files = memoryFiles()
    await createStore(fixedPorts(files, { pid: 5000 }), '/data').save(keptJob(0))
    expect([...files.disk().files.keys()]).toContain(`${FOLDER}/${LOCK_NAME}`)
    const { notes } = await createStore(fixedPorts(files), '/data').load(JOB_ID)
    expect(notes).toEqual([])
  })
})
