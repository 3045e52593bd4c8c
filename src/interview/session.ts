import type { OwnFigures } from '../figures/own-figures.ts'
import type { Job } from '../job/job.ts'
import type { Change } from '../plan/compare/change.ts'
import type { Plan } from '../plan/plan.ts'
import type { TraceRow } from '../plan/trace/trace-rows.ts'
import type { QuestionKey } from '../things/field.ts'
import type { Message } from '../things/message.ts'
import type { Day } from '../units/day.ts'
import { askedQuestions, type Question } from './asked.ts'
import type { Draft } from './draft.ts'
import { type Stand, standOrNext } from './walk.ts'

/** An accepted answer and what stood there before it: it can be put back. */
export interface Undoable {
  readonly key: QuestionKey
  readonly before: unknown
  readonly after: unknown
}

/** What is kept of an interview: everything needed to go on at the same question. */
export interface Kept {
  readonly job: Job
  readonly at: Stand | undefined
  readonly undo: readonly Undoable[]
}

/** What the person looks at. */
export type Page =
  | { readonly kind: 'question'; readonly key: QuestionKey }
  | { readonly kind: 'review'; readonly line: number }
  /** A stop or confirm on its own: its numbered ways out, or the explicit yes. `onward` = where to go afterwards. */
  | MessagePage
  | { readonly kind: 'help'; readonly key: QuestionKey; readonly onward: Page }
  | WhereFromPage

/** The tree of a number, made once when it is asked for: all its lines, and which of them are folded. */
export interface WhereFromPage {
  readonly kind: 'where-from'
  readonly title: string
  readonly says: readonly string[]
  readonly rows: readonly TraceRow[]
  readonly folded: readonly number[]
  /** Of the lines that are seen. */
  readonly line: number
  readonly onward: Page
}

/** Several pieces can raise the same message about one question: place and words tell them apart. */
export interface MessagePage {
  readonly kind: 'message'
  readonly code: string
  readonly about: QuestionKey
  readonly place: string
  readonly short: string
  readonly onward: Page
}

export const messagePageOf = ({ code, about, place, short }: Message, onward: Page): MessagePage => ({
  kind: 'message',
  code,
  about,
  place,
  short,
  onward,
})

/** What stands under the input: what was understood, or what is wrong. */
export type Said =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'echo'; readonly says: string; readonly note?: string }
  | { readonly kind: 'error'; readonly says: string }
  /** Probably a slip: Enter again takes it. */
  | { readonly kind: 'held'; readonly says: string; readonly value: unknown; readonly text: string }

/** An accepted answer on its way: first planned, then saved, and only then the next page is shown. */
export interface Underway {
  readonly job: Job
  readonly undo: readonly Undoable[]
  /** The question answered; undefined when only the place moves on. */
  readonly from: QuestionKey | undefined
  /** Where to go; undefined = to the question after `from`. */
  readonly to: Page | undefined
  readonly plan: Plan | undefined
}

export interface Session {
  readonly job: Job
  /** The plan of `job`. */
  readonly plan: Plan
  readonly asked: readonly Question[]
  readonly undo: readonly Undoable[]
  readonly page: Page
  /** Where Enter on a question leads back to, after it was chosen in the review. */
  readonly backTo: Page | undefined
  /** Typed but not accepted, by question: shown again on return. */
  readonly drafts: Readonly<Record<string, Draft>>
  readonly said: Said
  /** What the last answer changed in the plan, most important first; the screen shows what it has room for. */
  readonly effect: readonly Change[]
  readonly underway: Underway | undefined
  /** Whether what was answered is on disk. */
  readonly saved: 'saved' | 'not saved yet'
  readonly problem: string
  readonly today: Day
  /** The person's own figures as they are now; the job carries those it was begun with. Absent = not looked up. */
  readonly ownFigures?: OwnFigures | undefined
}

/** An interview that begins, or goes on where it stood. */
export function startSession(kept: Kept, plan: Plan, today: Day): Session {
  const asked = askedQuestions(kept.job, plan.used)
  return {
    job: kept.job,
    plan,
    asked,
    undo: kept.undo,
    page: pageOf(standOrNext(kept.job, asked, kept.at)),
    backTo: undefined,
    drafts: {},
    said: { kind: 'nothing' },
    effect: [],
    underway: undefined,
    saved: 'saved',
    problem: '',
    today,
  }
}

export const pageOf = (stand: Stand): Page =>
  stand === 'review' ? { kind: 'review', line: 0 } : { kind: 'question', key: stand }

/** The stand a page is kept as on disk. */
export function standOf(page: Page): Stand {
  switch (page.kind) {
    case 'question':
      return page.key
    case 'review':
      return 'review'
    case 'message':
    case 'help':
    case 'where-from':
      return standOf(page.onward)
  }
}

/** The question of a page, when it is asked now. */
export const questionOn = (session: Pick<Session, 'asked' | 'page'>): Question | undefined => {
  const { page } = session
  return page.kind === 'question' ? session.asked.find((q) => q.key === page.key) : undefined
}

/** The message a page is about; undefined once the plan no longer raises it. */
export const messageOn = (page: Page, plan: Plan): Message | undefined =>
  page.kind === 'message' ? plan.messages.find((m) => isAbout(page, m)) : undefined

const isAbout = (page: MessagePage, m: Message): boolean =>
  m.code === page.code && m.about === page.about && m.place === page.place && m.short === page.short

export const keptOf = (session: Session): Kept => ({ job: session.job, at: standOf(session.page), undo: session.undo })
