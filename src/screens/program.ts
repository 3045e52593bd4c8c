import type { JobStore, JobSummary } from '../archive/job-store.ts'
import { type Kept, keptOf, messageOn, type Session, startSession } from '../interview/session.ts'
import { step } from '../interview/step.ts'
import type { Effect, SessionEvent } from '../interview/stepped.ts'
import { emptyJob, type Job } from '../job/job.ts'
import { makePlan, type Plan } from '../plan/plan.ts'
import { NicheworkError } from '../things/failure.ts'
import type { Day } from '../units/day.ts'
import { filteredHome, type Home, type HomeChoice, homeChoice, movedHome } from './home.ts'
import type { Key } from './keys/key.ts'
import type { Scene } from './scene.ts'
import { eventOf } from './session-keys.ts'

/** The world the screens run in. */
export interface ProgramPorts {
  readonly store: JobStore
  readonly today: Day
  readonly newId: () => string
  readonly demoJob?: Job | undefined
  readonly writePacket: (
    job: Job,
    onProgress: (words: string) => void,
  ) => Promise<{ path: string; files: number; job: Job }>
  /** Called with each new scene. */
  readonly show: (scene: Scene) => void
  /** Resolves once the last scene has been drawn: the plan is worked out after the echo frame, never before it. */
  readonly drawn: () => Promise<void>
}

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
  const home: Scene = { kind: 'home', home: await homeOf(ports) }
  const run: Running = { ports, queue: [], scene: home, asked: 'not yet' }
  show(run, jobId === undefined ? home : await chosen(run, { kind: 'open', id: jobId }))
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

/** The one thing that changes: what is shown, and the keys still to be taken. */
interface Running {
  readonly ports: ProgramPorts
  readonly queue: Key[]
  scene: Scene
  /** Whether leaving with an unsaved answer was asked about. */
  asked: 'not yet' | 'asked'
  leave?: (session: Session | undefined) => void
  fail?: (fault: unknown) => void
}

function show(run: Running, scene: Scene): void {
  run.scene = scene
  run.ports.show(scene)
}

async function takeKeys(run: Running): Promise<void> {
  for (let key = run.queue.shift(); key !== undefined; key = run.queue.shift()) await takeKey(run, key)
}

async function takeKey(run: Running, key: Key): Promise<void> {
  const { scene } = run
  if (key.kind === 'key' && key.name === 'leave') return leaving(run)
  switch (scene.kind) {
    case 'home':
      return homeKey(run, scene.home, key)
    case 'interview': {
      const event = eventOf(key, scene.session)
      return event === undefined ? undefined : happen(run, scene.session, event)
    }
    case 'done':
      return doneKey(run, scene.session, key)
    case 'packing':
      return undefined
  }
}

/** Ctrl+C: at once; only with an answer that is not on disk it asks first, and a second one leaves. */
function leaving(run: Running): void {
  const session = run.scene.kind === 'home' ? undefined : run.scene.session
  if (session?.saved === 'not saved yet' && run.asked === 'not yet' && run.scene.kind === 'interview') {
    run.asked = 'asked'
    const problem = `${session.problem} The last answer is not on disk. Ctrl+C again leaves without it.`
    show(run, { kind: 'interview', session: { ...session, problem } })
  } else run.leave?.(session)
}

/** One event of the interview, and all that follows from it, before the next key. */
async function happen(run: Running, session: Session, event: SessionEvent): Promise<void> {
  const stepped = step(session, event)
  show(run, { kind: 'interview', session: stepped.session })
  if (isNewConfirm(session, stepped.session)) run.queue.length = 0
  for (const effect of stepped.effects) await perform(run, stepped.session, effect)
}

/** A caution that asks for a yes is not answered by keys pressed before it was drawn. */
const isNewConfirm = (before: Session, after: Session): boolean =>
  before.page.kind !== 'message' && messageOn(after.page, after.plan)?.weight === 'confirm'

async function perform(run: Running, session: Session, effect: Effect): Promise<void> {
  switch (effect.kind) {
    case 'plan':
      await run.ports.drawn()
      return happen(run, session, { kind: 'planned', plan: planOf(effect.job) })
    case 'save':
      return happen(run, session, await saving(run.ports, effect.kept))
    case 'home':
      return show(run, { kind: 'home', home: await homeOf(run.ports) })
    case 'write-packet':
      return packing(run, session)
  }
}

async function saving(ports: ProgramPorts, kept: Kept): Promise<SessionEvent> {
  try {
    await ports.store.save(kept)
    return { kind: 'saved' }
  } catch (fault) {
    if (!(fault instanceof NicheworkError)) throw fault
    return { kind: 'not-saved', says: fault.message }
  }
}

async function packing(run: Running, session: Session): Promise<void> {
  const words: string[] = []
  const progress = (said: string) => {
    words.push(said)
    show(run, { kind: 'packing', session, words: [...words] })
  }
  run.queue.length = 0
  progress('Checking the answers')
  try {
    const { path, files, job } = await run.ports.writePacket(session.job, progress)
    const after = startSession({ ...keptOf(session), job }, planOf(job), session.today)
    const saved = await saving(run.ports, { job, at: 'review', undo: session.undo })
    const problem = saved.kind === 'not-saved' ? saved.says : ''
    show(run, { kind: 'done', session: { ...after, problem }, path, files })
  } catch (fault) {
    if (!(fault instanceof NicheworkError)) throw fault
    show(run, { kind: 'interview', session: { ...session, said: { kind: 'error', says: fault.message } } })
  }
  run.queue.length = 0
}

async function homeKey(run: Running, home: Home, key: Key): Promise<void> {
  const next = (changed: Home) => show(run, { kind: 'home', home: changed })
  if (key.kind !== 'key') return next(filteredHome(home, (home.filter + key.text).slice(0, MOST_FILTER)))
  switch (key.name) {
    case 'enter': {
      const choice = homeChoice(home)
      if (choice?.kind === 'leave') return run.leave?.(undefined)
      return choice === undefined ? undefined : show(run, await chosen(run, choice))
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

/** What a choice of the list leads to; a job that cannot be opened leaves the list standing, with the reason. */
async function chosen(run: Running, choice: Exclude<HomeChoice, { kind: 'leave' }>): Promise<Scene> {
  const { ports } = run
  try {
    return { kind: 'interview', session: await begun(run, choice) }
  } catch (fault) {
    if (!(fault instanceof NicheworkError)) throw fault
    return { kind: 'home', home: { ...(await homeOf(ports)), problem: fault.message } }
  }
}

async function begun(run: Running, choice: Exclude<HomeChoice, { kind: 'leave' }>): Promise<Session> {
  const { ports } = run
  if (choice.kind === 'open') {
    const { kept, notes } = await ports.store.load(choice.id)
    return { ...startSession(kept, planOf(kept.job), ports.today), effect: notes.join(' ') }
  }
  const demo = choice.kind === 'demo' ? ports.demoJob : undefined
  const job: Job =
    demo === undefined ? emptyJob(ports.newId(), ports.today) : { ...demo, id: ports.newId(), demo: true }
  return startSession({ job, at: undefined, undo: [] }, planOf(job), ports.today)
}

/** After the packet: the list of jobs, or back to the answers. */
async function doneKey(run: Running, session: Session, key: Key): Promise<void> {
  if (key.kind !== 'key') return undefined
  if (key.name === 'enter') return show(run, { kind: 'home', home: await homeOf(run.ports) })
  if (key.name === 'esc')
    return show(run, { kind: 'interview', session: { ...session, page: { kind: 'review', line: 0 } } })
}

async function homeOf(ports: ProgramPorts): Promise<Home> {
  const jobs: readonly JobSummary[] = await ports.store.list()
  return { jobs, hasDemo: ports.demoJob !== undefined, line: 0, filter: '', problem: '' }
}

const planOf = (job: Job): Plan => makePlan(job, 'quick')
