import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { openTerminal, PROGRAM, type Terminal } from './harness.ts'

let terminal: Terminal | undefined
afterEach(() => terminal?.kill())

const start = (words: readonly string[] = []) => {
  const home = mkdtempSync(join(tmpdir(), 'nichework-start-'))
  terminal = openTerminal([PROGRAM, ...words], { cwd: home, env: { NICHEWORK_HOME: home } })
  return terminal
}

describe('the built program in a terminal', () => {
  it('opens the interview, and gives the terminal back when it is left', async () => {
    const opened = start()
    await opened.until((screen) => screen.trim().split('\n').length > 3)
    opened.type('\u0003')
    const { exitCode } = await opened.exited
    expect([0, 130]).toContain(exitCode)
    expect(opened.written().lastIndexOf('\u001b[?25h')).toBeGreaterThan(opened.written().lastIndexOf('\u001b[?25l'))
    expect(opened.written().lastIndexOf('\u001b[?1049l')).toBeGreaterThan(opened.written().lastIndexOf('\u001b[?1049h'))
  })

  it('opens it also where CI is set', async () => {
    const home = mkdtempSync(join(tmpdir(), 'nichework-start-'))
    terminal = openTerminal([PROGRAM], { cwd: home, env: { NICHEWORK_HOME: home, CI: 'true' } })
    await terminal.until((screen) => screen.trim().split('\n').length > 3)
  })

  it('takes a key that was pressed before its first frame', async () => {
    const opened = start()
    opened.type('\r')
    await opened.until(/1 of \d+/)
  })

  it('prints help and leaves', async () => {
    const helped = start(['--help'])
    expect((await helped.exited).exitCode).toBe(0)
    expect(helped.written()).toContain('Exit codes')
  })
})
