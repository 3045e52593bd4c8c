import { spawn } from 'node:child_process'
import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { createStore } from '../../src/archive/store.ts'
import { nodeFiles } from '../../src/ports/node/files.ts'
import { fixedPorts } from '../ports/fixed.ts'
import { JOB_ID, stateOf } from './jobs.ts'

const SAVER = fileURLToPath(new URL('./saver.ts', import.meta.url))
const KILLS = 3

/** Runs a process that saves state after state, kills it without warning, and gives the last state it reported. */
function killedAfter(folder: string, acknowledged: number): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', SAVER, folder], { stdio: ['ignore', 'pipe', 'inherit'] })
    let last = -1
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      last = Math.max(last, ...text.trim().split('\n').map(Number))
      if (last >= acknowledged) child.kill('SIGKILL')
    })
    child.on('error', reject)
    child.on('close', () => resolve(last))
  })
}

describe('a process killed without warning', () => {
  it(`loses no answer it reported as saved, ${KILLS} times in a row on one job`, async () => {
    const folder = await mkdtemp(join(tmpdir(), 'nichework-kill-'))
    for (let kill = 1; kill <= KILLS; kill++) {
      const reported = await killedAfter(folder, 7 * kill)
      const store = createStore(fixedPorts(nodeFiles, { pid: 5000 + kill }), folder)
      const { kept, notes } = await store.load(JOB_ID)
      expect(stateOf(kept)).toBeGreaterThanOrEqual(reported)
      expect(notes.filter((note) => note.includes('damaged'))).toEqual([])
    }
  }, 60_000)
})
