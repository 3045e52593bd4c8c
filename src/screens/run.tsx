import type { JobStore } from '../archive/job-store.ts'
import type { OwnFigures } from '../figures/own-figures.ts'
import type { Session } from '../interview/session.ts'
import type { Job } from '../job/job.ts'
import type { Day } from '../units/day.ts'
import type { Draw, Size } from './frame.ts'
import type { Key } from './keys/key.ts'
import { type Environment, readKeys } from './keys/read-keys.ts'
import { lookOf } from './look.ts'
import { jobProgram, type Program, startProgram } from './program.ts'
import { type TerminalScreen, terminalScreen } from './terminal-screen.ts'
import { watched } from './watch.ts'

export interface InterviewOptions {
  readonly store: JobStore
  /** Opens this job at once instead of the list of jobs. */
  readonly startAt?: { readonly jobId: string } | undefined
  readonly today: Day
  readonly newId: () => string
  readonly env: Environment
  readonly stdin: NodeJS.ReadStream
  readonly stdout: NodeJS.WriteStream
  readonly demoJob?: (() => Promise<Job>) | undefined
  readonly ownFigures?: (() => Promise<OwnFigures>) | undefined
  readonly writePacket: (
    job: Job,
    onProgress: (words: string) => void,
  ) => Promise<{ readonly path: string; readonly files: number; readonly job: Job }>
}

/** Frames a second at most: a frame is drawn only on a change, and 30 (the library's own limit) would make a key wait. */
const MOST_FRAMES = 250
const SIZE_UNKNOWN: Size = { columns: 80, rows: 24 }

/**
 * The interview in a terminal, from the list of jobs to the packet. Resolves with the exit code when the person leaves; the
 * terminal is given back on every way out. Needs stdin and stdout to be terminals: the caller has checked.
 */
export async function runInterview(o: InterviewOptions): Promise<number> {
  const screen = terminalScreen(o.stdout)
  const picture = watched<Draw>(() => [])
  const size = watched<Size>(sizeOf(o.stdout))
  const look = lookOf(o.env)
  const ports = {
    ...o,
    show: (_: unknown, draw: Draw) => picture.set(draw),
    window: () => ({ size: size.get(), look }),
    drawn: nextTurn,
  }
  const [program, ui] = await Promise.all([startProgram(ports, o.startAt?.jobId), loadUi()])
  screen.enter()
  const drawn = ui.draw(o, { picture, size, look })
  const release = holdTerminal(o, screen, size, program)
  // While the person reads the first frame. What goes wrong in loading is said when a key asks for it.
  void nextTurn()
    .then(jobProgram)
    .catch(() => undefined)
  try {
    const session = await Promise.race([program.left, drawn.exited])
    await settled(program)
    return goodbye(o.stdout, screen, session)
  } finally {
    drawn.end()
    release()
  }
}

/** The library is loaded only now, and after CI is out of the way: it would draw nothing until the end otherwise. */
async function loadUi() {
  delete process.env.CI
  delete process.env.CONTINUOUS_INTEGRATION
  const [{ render }, { App }] = await Promise.all([import('ink'), import('./app.tsx')])
  return {
    draw: (o: InterviewOptions, props: Parameters<typeof App>[0]) => {
      const instance = render(<App {...props} />, {
        stdin: o.stdin,
        stdout: o.stdout,
        exitOnCtrlC: false,
        patchConsole: false,
        maxFps: MOST_FRAMES,
      })
      // Ink ends by itself only when drawing fails: its promise then rejects, and so does the interview.
      return { exited: instance.waitUntilExit().then(() => undefined), end: () => instance.unmount() }
    },
  }
}

const sizeOf = (stdout: NodeJS.WriteStream): Size => ({
  columns: stdout.columns || SIZE_UNKNOWN.columns,
  rows: stdout.rows || SIZE_UNKNOWN.rows,
})

/** Lets the frame that stands go out first. */
const nextTurn = (): Promise<void> => new Promise((resolve) => setImmediate(() => setImmediate(resolve)))

const SIGNALS = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const
const CLEAR = '\u001B[2J\u001B[H'

/** Keys, resizes, signals and suspension; gives back what lets go of all of them. */
function holdTerminal(
  o: InterviewOptions,
  screen: TerminalScreen,
  size: { readonly set: (size: Size) => void },
  program: Program,
): () => void {
  const listen = () => readKeys(o.stdin, o.env, (keys) => heard(keys))
  let stopKeys = listen()
  const resize = () => {
    o.stdout.write(CLEAR)
    size.set(sizeOf(o.stdout))
  }
  const resume = () => {
    screen.enter()
    stopKeys = listen()
    // A frame of another size in between: the same frame twice would not be drawn again.
    size.set({ columns: 1, rows: 1 })
    void nextTurn().then(resize)
  }
  const suspend = () => {
    stopKeys()
    screen.restore()
    process.once('SIGCONT', resume)
    process.kill(process.pid, 'SIGTSTP')
  }
  const heard = (keys: readonly Key[]) => {
    program.press(keys.filter((k) => k.kind !== 'key' || k.name !== 'suspend'))
    if (keys.some((k) => k.kind === 'key' && k.name === 'suspend')) suspend()
  }
  const letGo = holdSignals(screen, () => stopKeys())
  const gone = () => process.exit(SIGNALS.SIGHUP)
  o.stdout.on('resize', resize)
  o.stdout.on('error', gone)
  return () => {
    stopKeys()
    screen.restore()
    letGo()
    o.stdout.off('resize', resize)
    o.stdout.off('error', gone)
    process.off('SIGCONT', resume)
  }
}

/** On a signal the terminal is given back first; every answer is on disk already. */
function holdSignals(screen: TerminalScreen, stopKeys: () => void): () => void {
  const handlers = Object.entries(SIGNALS).map(([signal, code]) => {
    const handler = () => {
      stopKeys()
      screen.restore()
      process.exit(code)
    }
    process.on(signal, handler)
    return () => process.off(signal, handler)
  })
  process.on('exit', screen.restore)
  return () => {
    for (const off of handlers) off()
    process.off('exit', screen.restore)
  }
}

const MOST_WAIT_MS = 1000

/** An answer that is being saved as the person leaves gets the time to reach the disk. */
const settled = (program: Program): Promise<unknown> =>
  Promise.race([
    program.idle(),
    new Promise((resolve) => {
      setTimeout(resolve, MOST_WAIT_MS).unref()
    }),
  ])

function goodbye(stdout: NodeJS.WriteStream, screen: TerminalScreen, session: Session | undefined): number {
  screen.restore()
  const unsaved = session?.saved === 'not saved yet'
  stdout.write(unsaved ? `Not saved: ${session.problem}\n` : 'Saved. Go on with: npm start\n')
  return unsaved ? CANNOT_WRITE : 0
}

/** Exit code for what could not be written. */
const CANNOT_WRITE = 5
