import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
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

  it('says that it was updated when a piece of it is gone, and gives the terminal back', async () => {
    const home = mkdtempSync(join(tmpdir(), 'nichework-start-'))
    const dist = join(home, 'program', 'dist')
    cpSync(dirname(PROGRAM), dist, { recursive: true })
    cpSync(join(dirname(PROGRAM), '../package.json'), join(home, 'program', 'package.json'))
    terminal = openTerminal([join(dist, 'cli.js')], { cwd: home, columns: 120, env: { NICHEWORK_HOME: home } })
    await terminal.until('the demo')
    rmSync(join(dist, 'pieces'), { recursive: true })
    terminal.type('\u001b[B\r')
    expect((await terminal.exited).exitCode).toBe(1)
    expect(terminal.screen()).toContain(
      'nichework was updated while it was open. Your answers are saved. Start it again: npm start',
    )
    expect(terminal.written()).not.toContain('ERR_MODULE_NOT_FOUND')
    expect(terminal.written().lastIndexOf('\u001b[?25h')).toBeGreaterThan(terminal.written().lastIndexOf('\u001b[?25l'))
  })

  it('prints help and leaves', async () => {
    const helped = start(['--help'])
    expect((await helped.exited).exitCode).toBe(0)
    expect(helped.written()).toContain('Exit codes')
  })
})
