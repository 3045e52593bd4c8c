import type { Plan } from '../plan/plan.ts'
import type { ChapterId } from '../things/field.ts'
import type { Message } from '../things/message.ts'
import { type Day, day, showDayAndYear } from '../units/day.ts'
import { chapterOf } from './question-words.ts'

/** Something that was asked for with an explicit yes, and the day of the yes (undefined = not given yet). */
export interface Accepted {
  readonly short: string
  readonly place: string
  readonly on: Day | undefined
}

/** `Wood stands against the chimney breast (breast)`, without the place where the sentence names it itself. */
export function acceptedWords({ short, place }: Pick<Accepted, 'short' | 'place'>): string {
  const sentence = short.replace(/\.$/, '')
  return sentence.includes(place) ? `${capital(sentence)}.` : `${capital(sentence)} (${place}).`
}

/** `Confirmed Fri 20 Nov 2026.` */
export const confirmedOn = ({ on }: Pick<Accepted, 'on'>): string =>
  on === undefined ? 'Not confirmed yet.' : `Confirmed ${showDayAndYear(on)}.`

/** What a yes does not change: it stands under what was asked for. */
export const GOVERNS =
  'A yes here changes no rule: local code, the appliance manual and licensed practice govern mantel, hearth, gas and electricity.'

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** The plan's confirms of some chapters, with the day each was accepted for the very numbers it has now. */
export const acceptedConfirms = (plan: Plan, chapters: readonly ChapterId[]): readonly Accepted[] =>
  plan.messages
    .filter((m) => m.weight === 'confirm' && chapters.some((c) => c === chapterOf(m.about)))
    .map((m) => ({ short: m.short, place: m.place, on: acceptedOn(plan, m) }))

function acceptedOn(plan: Plan, message: Message): Day | undefined {
  const given = plan.job.confirmed.find(
    (c) => c.code === message.code && c.about === message.about && sameValues(c.values, message.values),
  )
  return given === undefined ? undefined : day(given.on)
}

function sameValues(a: Message['values'], b: Message['values']): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)])
  return [...keys].every((key) => a[key] === b[key])
}
