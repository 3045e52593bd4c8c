import { mkdtempSync, readdirSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { readAnswers } from '../../src/interview/answers.ts'
import { waitingConfirms } from '../../src/interview/confirmed.ts'
import type { Job } from '../../src/job/job.ts'
import { openPacket } from '../../src/packet/open-packet.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { day } from '../../src/units/day.ts'
import { openTerminal, PROGRAM, type Terminal } from './harness.ts'
import { keptIn, type Texts, Typist } from './typist.ts'

const FILE = JSON.parse(readFileSync(new URL('../../demo/alcoves-inch/answers.json', import.meta.url), 'utf8'))
const TEXTS: Texts = FILE.answers
const END = '\u001b[F'
const CTRL_C = '\u0003'
const ANSWERED_BEFORE_THE_KILL = 25

let terminal: Terminal | undefined
afterEach(() => terminal?.kill())

const home = mkdtempSync(join(tmpdir(), 'nichework-demo-'))
const cwd = mkdtempSync(join(tmpdir(), 'nichework-out-'))
function start(): Terminal {
  terminal = openTerminal([PROGRAM], { cwd, rows: 40, columns: 80, env: { NICHEWORK_HOME: home } })
  return terminal
}

/** The answers given to the questions of the file, by key. */
const givenIn = (job: Job): Record<string, unknown> =>
  Object.fromEntries(
    Object.keys(TEXTS).map((key) => {
      const [place = '', id = ''] = key.split('.')
      return [key, job.facts[place]?.[id] ?? job.choices[place]?.[id] ?? job.private[place]?.[id]]
    }),
  )

describe('the demo interview, typed', () => {
  it('goes from start to packet, killed once without warning and resumed at the same question', async () => {
    const first = start()
    await first.until('a new job')
    first.type('\r')
    const before = await new Typist(first, home, TEXTS).answer('job.title', ANSWERED_BEFORE_THE_KILL)
    first.kill('SIGKILL')
    await first.exited

    const kept = await keptIn(home)
    expect(before).toHaveLength(ANSWERED_BEFORE_THE_KILL)
    const second = start()
    await second.until(String(TEXTS['job.title']))
    second.type('\r')
    const after = await new Typist(second, home, TEXTS).answer(kept.at ?? 'job.title')
    expect(before).not.toContain(after[0])

    await second.until('Check answers')
    const { job } = await keptIn(home)
    for (let open = waitingConfirms(job, makePlan(job, 'quick').messages).length; open > 0; open--) {
      second.type('\r')
      await second.until('Type yes to keep it')
      second.type('yes\r')
      await second.until('Check answers')
    }
    second.type(END)
    await second.until('Write the packet')
    second.type('\r')
    await second.until('-office.zip', 60_000)
    second.type(CTRL_C)
    expect((await second.exited).exitCode).toBe(0)

    const [zip = ''] = readdirSync(cwd)
    const packet = await openPacket(readFileSync(join(cwd, zip)), zip)
    const meant = readAnswers(FILE, { id: 'demo', today: day('2026-11-25') })
    expect(meant.faults).toEqual([])
    expect(givenIn(packet.job)).toEqual(givenIn(meant.job))
    expect(makePlan(packet.job, 'quick').parts).toEqual(makePlan(meant.job, 'quick').parts)
    expect(packet.notes).toEqual([])
    expect(packet.job).toEqual((await keptIn(home)).job)
  }, 300_000)
})
