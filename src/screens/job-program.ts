import type { OwnFigures } from '../figures/own-figures.ts'
import { type Kept, keptOf, messageOn, type Session, startSession } from '../interview/session.ts'
import { step } from '../interview/step.ts'
import type { Effect, SessionEvent } from '../interview/stepped.ts'
import { emptyJob, type Job, withOwnFigures } from '../job/job.ts'
import { makePlan, type Plan } from '../plan/plan.ts'
import { NicheworkError } from '../things/failure.ts'
import { layoutOf } from './frame.ts'
import type { HomeChoice } from './home.ts'
import type { Key } from './keys/key.ts'
import { whereOf } from './place-words.ts'
import { homeOf, type ProgramPorts, type Running, showHome } from './running.ts'
import { type JobScene, sceneFrame } from './scene.ts'
import { eventOf } from './session-keys.ts'

/** A key on a page of a job. */
export async function jobKey(run: Running, scene: JobScene, key: Key): Promise<void> {
  if (key.kind === 'key' && key.name === 'leave') return leaving(run, scene)
  switch (scene.kind) {
    case 'interview': {
      const { size, look } = run.ports.window()
      const event = eventOf(key, scene.session, layoutOf(size, look))
      return event === undefined ? undefined : happen(run, scene.session, event)
    }
    case 'done':
      return doneKey(run, scene.session, key)
    case 'packing':
      return undefined
  }
}

function show(run: Running, scene: JobScene): void {
  run.scene = scene
  run.ports.show(scene, (size, look) => sceneFrame(scene, size, look))
}

/** Ctrl+C: at once; only with an answer that is not on disk it asks first, and a second one leaves. */
function leaving(run: Running, { kind, session }: JobScene): void {
  if (session.saved === 'not saved yet' && run.asked === 'not yet' && kind === 'interview') {
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
      return showHome(run, await homeOf(run.ports))
    case 'write-packet':
      return packing(run, session)
  }
}

async function saving(ports: ProgramPorts, kept: Kept): Promise<SessionEvent> {
  try {
    await ports.store.save({ ...kept, where: whereOf(kept) })
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
    const after = { ...startSession({ ...keptOf(session), job }, planOf(job), session.today), ...ownOf(session) }
    const saved = await saving(run.ports, { job, at: 'review', undo: session.undo })
    const problem = saved.kind === 'not-saved' ? saved.says : ''
    show(run, { kind: 'done', session: { ...after, problem }, path, files })
  } catch (fault) {
    if (!(fault instanceof NicheworkError)) throw fault
    show(run, { kind: 'interview', session: { ...session, said: { kind: 'error', says: fault.message } } })
  }
  run.queue.length = 0
}

type JobChoice = Exclude<HomeChoice, { kind: 'leave' }>

/** What a choice of the list leads to; a job that cannot be opened leaves the list standing, with the reason. */
export async function choose(run: Running, choice: JobChoice): Promise<void> {
  try {
    show(run, { kind: 'interview', session: await begun(run.ports, choice) })
  } catch (fault) {
    if (!(fault instanceof NicheworkError)) throw fault
    showHome(run, { ...(await homeOf(run.ports)), problem: fault.message })
  }
}

async function begun(ports: ProgramPorts, choice: JobChoice): Promise<Session> {
  if (choice.kind === 'open') return opened(ports, choice.id)
  const demo = choice.kind === 'demo' ? await ports.demoJob?.() : undefined
  const ownFigures = await ports.ownFigures?.()
  const job: Job =
    demo === undefined
      ? withOwnFigures(emptyJob(ports.newId(), ports.today), ownFigures ?? {})
      : { ...demo, id: ports.newId(), demo: true }
  return { ...startSession({ job, at: undefined, undo: [] }, planOf(job), ports.today), ownFigures }
}

/** A kept job reckons with the figures it carries: a fault in those of the folder is only said. */
async function opened(ports: ProgramPorts, id: string): Promise<Session> {
  const { kept, notes } = await ports.store.load(id)
  const { ownFigures, fault } = await ownFiguresNow(ports)
  const said = [...notes, ...(fault === undefined ? [] : [fault])]
  return {
    ...startSession(kept, planOf(kept.job), ports.today),
    effect: said.map((says) => ({ weight: 0, says })),
    ownFigures,
  }
}

async function ownFiguresNow(
  ports: ProgramPorts,
): Promise<{ readonly ownFigures: OwnFigures | undefined; readonly fault: string | undefined }> {
  try {
    return { ownFigures: await ports.ownFigures?.(), fault: undefined }
  } catch (fault) {
    if (!(fault instanceof NicheworkError)) throw fault
    return { ownFigures: undefined, fault: fault.message }
  }
}

/** After the packet: the list of jobs, or back to the answers. */
async function doneKey(run: Running, session: Session, key: Key): Promise<void> {
  if (key.kind !== 'key') return undefined
  if (key.name === 'enter') return showHome(run, await homeOf(run.ports))
  if (key.name === 'esc')
    return show(run, { kind: 'interview', session: { ...session, page: { kind: 'review', line: 0 } } })
}

const ownOf = ({ ownFigures }: Session) => ({ ownFigures })

const planOf = (job: Job): Plan => makePlan(job, 'quick')
