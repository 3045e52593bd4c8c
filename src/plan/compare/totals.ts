import type { Message, Weight } from '../../things/message.ts'
import { showDay } from '../../units/day.ts'
import { showHours } from '../../units/hours.ts'
import { showMoney } from '../../units/money.ts'
import type { Plan } from '../plan.ts'
import type { Change } from './change.ts'
import { WEIGHTS } from './weights.ts'

/** A message is the same one while its code, question, part and place are. */
const keyOf = (m: Message): string => [m.code, m.about, m.part ?? '', m.place].join('|')

/** How many stops and confirmations came or went; which ones, the review shows. */
export const changedMessages = (before: Plan, after: Plan): readonly Change[] => [
  ...counted(came(before, after, 'stop'), (n) => `${n} new ${n === 1 ? 'stop' : 'stops'}`, {
    weight: WEIGHTS.newStop,
    announce: true,
  }),
  ...counted(came(after, before, 'stop'), (n) => `${n} ${n === 1 ? 'stop' : 'stops'} cleared`, {
    weight: WEIGHTS.clearedStop,
  }),
  ...counted(came(before, after, 'confirm'), (n) => `${n} more to confirm`, {
    weight: WEIGHTS.newConfirm,
    announce: true,
  }),
  ...counted(came(after, before, 'confirm'), (n) => `${n} no longer to confirm`, { weight: WEIGHTS.clearedConfirm }),
]

const counted = (
  { length }: readonly Message[],
  says: (count: number) => string,
  rank: Pick<Change, 'weight' | 'announce'>,
): readonly Change[] => (length === 0 ? [] : [{ ...rank, says: says(length) }])

const came = (from: Plan, to: Plan, weight: Weight): readonly Message[] =>
  messagesCome(from, to).filter((m) => m.weight === weight)

/** Messages of the second plan that the first does not have. */
export function messagesCome(from: Plan, to: Plan): readonly Message[] {
  const known = new Set(from.messages.map(keyOf))
  return to.messages.filter((m) => !known.has(keyOf(m)))
}

/** `sheets 5 → 4` when one material changes or there is only one; else by material. Layouts alone: less weight. */
export function changedSheets(before: Plan, after: Plan): readonly Change[] {
  const [was, now] = [sheetsOf(before), sheetsOf(after)]
  const all = (counts: ReadonlyMap<string, number>) => [...counts.values()].reduce((n, c) => n + c, 0)
  const total = all(was) === all(now) ? [] : [`sheets ${all(was)} → ${all(now)}`]
  const each = [...new Set([...was.keys(), ...now.keys()])].flatMap((name) =>
    (was.get(name) ?? 0) === (now.get(name) ?? 0)
      ? []
      : [`${name}: sheets ${was.get(name) ?? 0} → ${now.get(name) ?? 0}`],
  )
  if (total.length + each.length === 0) return changedLayouts(before, after)
  return [
    ...total.map((says) => ({ weight: WEIGHTS.sheets, says })),
    ...(total.length === 1 && each.length === 1 ? [] : each.map((says) => ({ weight: WEIGHTS.layouts, says }))),
  ]
}

/** Sheets to order by the name asked for at the counter. */
function sheetsOf(plan: Plan): ReadonlyMap<string, number> {
  const names = new Map(plan.panels.layouts.map((l) => [l.material.id, l.material.name]))
  return new Map([...plan.panels.order].map(([id, order]) => [names.get(id) ?? id, order.sheets]))
}

function changedLayouts(before: Plan, after: Plan): readonly Change[] {
  const words = (plan: Plan) =>
    plan.panels.layouts.map((l) => l.laid.map((p) => [p.part.id, p.x, p.y, p.length, p.width].join(' ')).join('|'))
  const [was, now] = [words(before), words(after)]
  const count = now.filter((sheet, i) => sheet !== was[i]).length
  return count === 0
    ? []
    : [{ weight: WEIGHTS.layouts, says: `${count} ${count === 1 ? 'sheet is' : 'sheets are'} laid out anew` }]
}

/** Finish day, price and hours. */
export const changedTotals = (before: Plan, after: Plan): readonly Change[] => [
  ...differing(WEIGHTS.finish, 'finish', showDay(before.calendar.finish), showDay(after.calendar.finish)),
  ...differing(WEIGHTS.price, 'price', showMoney(before.price.total), showMoney(after.price.total)),
  ...differing(WEIGHTS.hours, 'hours', showHours(before.price.hours), showHours(after.price.hours)),
]

const differing = (weight: number, thing: string, was: string, now: string): readonly Change[] =>
  was === now ? [] : [{ weight, says: `${thing} ${was} → ${now}` }]

/** The first task that now comes at another turn, and tasks that came or went. */
export function changedOrder(before: Plan, after: Plan): readonly Change[] {
  const [was, now] = [before.calendar.tasks, after.calendar.tasks]
  const wasIds = new Set(was.map((t) => t.id))
  const nowIds = new Set(now.map((t) => t.id))
  const kept = now.filter((t) => wasIds.has(t.id))
  const keptBefore = was.filter((t) => nowIds.has(t.id))
  const at = kept.findIndex((t, i) => t.id !== keptBefore[i]?.id)
  const [first, second] = [kept[at], keptBefore[at]]
  const turned =
    first === undefined || second === undefined
      ? []
      : [`order: ${first.title.toLowerCase()} now before ${second.title.toLowerCase()}`]
  const fresh = now.filter((t) => !wasIds.has(t.id)).map((t) => `new step: ${t.title.toLowerCase()}`)
  const gone = was.filter((t) => !nowIds.has(t.id)).map((t) => `step gone: ${t.title.toLowerCase()}`)
  return [...turned, ...fresh, ...gone].map((says) => ({ weight: WEIGHTS.order, says }))
}
