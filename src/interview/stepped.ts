import type { Job } from '../job/job.ts'
import type { Plan } from '../plan/plan.ts'
import type { LineEdit } from './line.ts'
import type { Kept, Session } from './session.ts'

/** What happens to an interview: what the person does, and what came of the effects asked for. */
export type SessionEvent =
  | { readonly kind: 'edit'; readonly edit: LineEdit }
  | { readonly kind: 'enter' | 'back' | 'help' | 'review' | 'where-from' }
  /** Up or down in a list, a table or the review, by so many lines. */
  | { readonly kind: 'move'; readonly by: number }
  | { readonly kind: 'planned'; readonly plan: Plan }
  | { readonly kind: 'saved' }
  | { readonly kind: 'not-saved'; readonly says: string }

/** What the world is asked to do; each is answered by an event before the next key is taken. */
export type Effect =
  | { readonly kind: 'plan'; readonly job: Job }
  | { readonly kind: 'save'; readonly kept: Kept }
  | { readonly kind: 'write-packet' }
  | { readonly kind: 'home' }

export interface Stepped {
  readonly session: Session
  readonly effects: readonly Effect[]
}
