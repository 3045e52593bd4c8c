import { within } from '../../things/formula.ts'
import type { Message } from '../../things/message.ts'
import type { Task } from '../../things/task.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'
import type { TaskDraft } from './draft.ts'
import { hoursOf } from './efforts.ts'
import { extraFitting } from './extras.ts'
import { finishingTasks } from './finishing.ts'
import { fittingTasks } from './fitting.ts'
import { houseTasks } from './house.ts'
import { linked } from './linked.ts'
import { officeTasks } from './office.ts'
import { paintTasks } from './paint.ts'
import { shopTasks } from './shop.ts'
import type { Taping } from './tape-time.ts'
import { upperTasks } from './upper.ts'
import { workloadOf } from './workload.ts'

export interface TaskPlan {
  readonly tasks: readonly Task[]
  readonly messages: readonly Message[]
}

/** All tasks with something to do, in their written order; each names only tasks that stand before it. */
export function tasks(context: PlanContext, built: Built, taping: Taping): TaskPlan {
  const load = workloadOf(context, built)
  const drafts = linked([
    ...officeTasks(load),
    ...shopTasks(load),
    ...houseTasks(load),
    ...paintTasks(load),
    ...fittingTasks(load),
    ...upperTasks(load),
    extraFitting(load),
    ...finishingTasks(load, taping),
  ])
  return { tasks: drafts.map((d) => within(d.id, () => taskOf(context, d, built.fixings))), messages: [] }
}

/** Two people's hours are both counted. */
function taskOf({ figures }: PlanContext, draft: TaskDraft, fixings: Built['fixings']): Task {
  const marks = draft.marks ?? []
  const heavy = liftedWhole(draft) ? marks.filter((m) => fixings.twoPeople.has(m)) : []
  const lifts = [...heavy.map((m) => liftWords(fixings, m)), ...(draft.lifts ?? [])]
  const people = lifts.length > 0 ? 2 : 1
  return {
    id: draft.id,
    title: draft.title,
    after: draft.after,
    hours: hoursOf(figures, { efforts: draft.efforts ?? [], promised: draft.promised ?? {}, people }),
    people,
    place: draft.place,
    wait: { clockHours: 0, workingDays: 0, says: '', ...draft.wait },
    marks,
    tools: draft.tools ?? [],
    setOut: draft.setOut ?? [],
    checks: draft.checks ?? [],
    cautions: [...(draft.cautions ?? []), ...lifts],
    work: draft.work,
  }
}

/** Two are named only where two are enough. */
function liftWords({ loads, twoPeople }: Built['fixings'], mark: string): string {
  const beyond = loads.some((load) => load.mark === mark && load.help === 'lift aid')
  return `${beyond ? 'Two people are too few for' : 'Two people lift'} ${mark}: ${twoPeople.get(mark) ?? ''}.`
}

/** Parts are carried and lifted as whole pieces only when they are fitted. */
const liftedWhole = (draft: TaskDraft): boolean => draft.place === 'site' && draft.id.startsWith('F')
