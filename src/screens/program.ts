import type { Session } from '../interview/session.ts'
import { filteredHome, type Home, homeChoice, movedHome } from './home.ts'
import type { Key } from './keys/key.ts'
import { homeOf, type ProgramPorts, type Running, showHome } from './running.ts'
import type { Scene } from './scene.ts'

export interface Program {
  /** Keys in the order they were pressed; they wait for each other. */
  readonly press: (keys: readonly Key[]) => void
  /** Resolves with the last session (undefined at the list of jobs) when the person leaves. */
  readonly left: Promise<Session | undefined>
  /** Resolves when all keys pressed so far are dealt with. */
  readonly idle: () => Promise<void>
  readonly scene: () => Scene
}

/** Runs the screens' program: keys in, scenes out; every effect is done before the next key is taken. */
export async function startProgram(ports: ProgramPorts, jobId: string | undefined): Promise<Program> {
  const home = await homeOf(ports)
  const run: Running = { ports, queue: [], scene: { kind: 'home', home }, asked: 'not yet' }
  if (jobId === undefined) showHome(run, home)
  else await (await jobProgram()).choose(run, { kind: 'open', id: jobId })
  let work: Promise<void> = Promise.resolve()
  const left = new Promise<Session | undefined>((leave, fail) => {
    run.leave = leave
    run.fail = fail
  })
  const press = (keys: readonly Key[]) => {
    run.queue.push(...keys)
    work = work.then(() => takeKeys(run)).catch((fault: unknown) => run.fail?.(fault))
  }
  return { press, left, idle: () => work, scene: () => run.scene }
}

/** The interview and the plan, loaded with the first job and not before the list of jobs stands on the screen. */
export const jobProgram = () => import('./job-program.ts')

async function takeKeys(run: Running): Promise<void> {
  for (let key = run.queue.shift(); key !== undefined; key = run.queue.shift()) await takeKey(run, key)
}

async function takeKey(run: Running, key: Key): Promise<void> {
  const { scene } = run
  if (scene.kind === 'home') return homeKey(run, scene.home, key)
  return (await jobProgram()).jobKey(run, scene, key)
}

async function homeKey(run: Running, home: Home, key: Key): Promise<void> {
  const next = (changed: Home) => showHome(run, changed)
  if (key.kind !== 'key') return next(filteredHome(home, (home.filter + key.text).slice(0, MOST_FILTER)))
  switch (key.name) {
    case 'leave':
      return run.leave?.(undefined)
    case 'enter': {
      const choice = homeChoice(home)
      if (choice?.kind === 'leave') return run.leave?.(undefined)
      return choice === undefined ? undefined : (await jobProgram()).choose(run, choice)
    }
    case 'up':
    case 'shift-tab':
      return next(movedHome(home, -1))
    case 'down':
    case 'tab':
      return next(movedHome(home, 1))
    case 'backspace':
      return next(filteredHome(home, home.filter.slice(0, -1)))
    case 'esc':
    case 'clear':
      return next(filteredHome(home, ''))
    default:
      return undefined
  }
}

const MOST_FILTER = 40
