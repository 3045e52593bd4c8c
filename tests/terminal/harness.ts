import { fileURLToPath } from 'node:url'
import pty from '@lydell/node-pty'
import xterm from '@xterm/headless'

/** The built program: what a person runs, not its source. */
export const PROGRAM = fileURLToPath(new URL('../../dist/cli.js', import.meta.url))

export interface Terminal {
  /** The lines seen now, without blanks at their ends. */
  readonly screen: () => string
  /** Sends keys as the terminal would. */
  readonly type: (keys: string) => void
  readonly resize: (columns: number, rows: number) => void
  /** Resolves when the screen shows what is wanted (a text may be wrapped over lines); rejects with the screen when time runs out or the program ends. */
  readonly until: (shown: Shown, milliseconds?: number) => Promise<string>
  readonly kill: (signal?: string) => void
  /** Exit code and signal, once the program has ended. */
  readonly exited: Promise<{ readonly exitCode: number; readonly signal: number | undefined }>
  /** Everything the program wrote, control sequences included. */
  readonly written: () => string
}

export interface TerminalOptions {
  readonly columns?: number
  readonly rows?: number
  readonly cwd?: string
  readonly env?: Readonly<Record<string, string>>
}

const PATIENCE = 10_000
/** Signs of a test run or of a build server that would change how the program behaves. */
const NOT_PASSED_ON =
  /^(CI|CONTINUOUS_INTEGRATION|NO_COLOR|FORCE_COLOR|NODE_OPTIONS|NODE_ENV|VITEST.*|NICHEWORK_HOME|SOURCE_DATE_EPOCH|INK_.*)$/

export const cleanEnvironment = (more: Readonly<Record<string, string>> = {}): Record<string, string> => ({
  ...Object.fromEntries(
    Object.entries(process.env).flatMap(([key, value]) =>
      value === undefined || NOT_PASSED_ON.test(key) ? [] : [[key, value]],
    ),
  ),
  TERM: 'xterm-256color',
  ...more,
})

/** Starts a program in a terminal of its own. Call `kill` in `afterEach`, or the test process waits for it. */
export function openTerminal(words: readonly string[], options: TerminalOptions = {}): Terminal {
  const { columns: cols = 80, rows = 24 } = options
  const term = new xterm.Terminal({ cols, rows, allowProposedApi: true })
  const child = pty.spawn(process.execPath, [...words], {
    cols,
    rows,
    cwd: options.cwd ?? process.cwd(),
    env: cleanEnvironment(options.env),
  })
  const waiting = new Set<() => void>()
  const wake = () => {
    for (const look of waiting) look()
  }
  let written = ''
  let ended = false
  child.onData((data) => {
    written += data
    term.write(data, wake)
  })
  const exited = new Promise<{ exitCode: number; signal: number | undefined }>((resolve) => {
    child.onExit(({ exitCode, signal }) => {
      // The last output may still be on its way to the screen.
      term.write('', () => {
        ended = true
        wake()
        resolve({ exitCode, signal })
      })
    })
  })
  const screen = () => {
    const { active } = term.buffer
    return Array.from(
      { length: term.rows },
      (_, row) => active.getLine(active.viewportY + row)?.translateToString(true) ?? '',
    ).join('\n')
  }
  return {
    screen,
    exited,
    written: () => written,
    type: (keys) => child.write(keys),
    resize: (columns, newRows) => {
      term.resize(columns, newRows)
      child.resize(columns, newRows)
    },
    kill: (signal = 'SIGKILL') => {
      if (!ended) child.kill(signal)
    },
    until: (shown, milliseconds = PATIENCE) =>
      new Promise((resolve, reject) => {
        const wanted = () => isShown(screen(), shown)
        const done = (act: () => void) => {
          clearTimeout(timer)
          waiting.delete(look)
          act()
        }
        const missing = (why: string) =>
          new Error(`${why} before the screen showed ${String(shown)}. It shows:\n${screen()}`)
        const look = () => {
          if (wanted()) done(() => resolve(screen()))
          else if (ended) done(() => reject(missing('The program ended')))
        }
        const timer = setTimeout(() => done(() => reject(missing(`${milliseconds} ms passed`))), milliseconds)
        waiting.add(look)
        look()
      }),
  }
}

/** A text, a pattern, or a look of one's own. */
export type Shown = string | RegExp | ((screen: string) => boolean)

/** Whether a screen shows it. */
export function isShown(screen: string, shown: Shown): boolean {
  if (typeof shown === 'function') return shown(screen)
  return typeof shown === 'string' ? squeezed(screen).includes(squeezed(shown)) : shown.test(screen)
}

const squeezed = (text: string): string => text.replace(/\s+/g, ' ')
