import type * as z from 'zod'
import type { Length } from '../units/length.ts'
import type { BayKind, NamedBay, Place } from './place.ts'

export const CHAPTERS = [
  'job',
  'wall',
  'firebox',
  'cabinets',
  'shelves',
  'mantel',
  'make-or-buy',
  'finish',
  'hardware',
  'install',
  'price',
] as const
export type ChapterId = (typeof CHAPTERS)[number]

/** Facts are measured and never copied to another job; choices are; private answers never reach the plan. */
export type Section = 'facts' | 'choices' | 'private'

/** The question and the place it is asked at: `a.widths`, `job.units`. The address of an answer everywhere. */
export type QuestionKey = `${Place}.${string}`

/** "Not measured yet" is an answer of its own: the plan goes on with a stated assumption. */
export const NOT_MEASURED = 'not measured'
export type NotMeasured = typeof NOT_MEASURED
export type Answer<T> = T | NotMeasured

export interface Option {
  readonly id: string
  readonly says: string
}

/** A plausible reading as it is typed, in a job of each system. */
export type Like = { readonly inch: string; readonly metric: string }

/** One column of a table answer. */
export interface Column {
  readonly id: string
  readonly says: string
  readonly entry: /** `like`: how a plausible reading is typed in a job of each system; what is off the true may lie on either side of 0. */
    | { readonly kind: 'length'; readonly signed: boolean; readonly like: Like }
    | { readonly kind: 'choice'; readonly options: readonly Option[] }
    | { readonly kind: 'count'; readonly least: number; readonly most: number; readonly like: string }
  readonly needed: boolean
}

export interface LengthRange {
  readonly inch: readonly [least: Length, most: Length]
  readonly metric: readonly [least: Length, most: Length]
}

/** How an answer is typed. A closed list: `interview/enter` reads each kind, the screens draw each kind. */
export type Entry =
  | { readonly kind: 'length'; readonly range: LengthRange }
  | {
      readonly kind: 'lengths'
      readonly range: LengthRange
      readonly labels?: readonly string[]
      readonly least: number
      readonly most: number
    }
  | { readonly kind: 'table'; readonly columns: readonly Column[]; readonly least: number; readonly most: number }
  | { readonly kind: 'bays' }
  | { readonly kind: 'count'; readonly least: number; readonly most: number }
  | { readonly kind: 'choice'; readonly options: readonly Option[] }
  | { readonly kind: 'yes-no' }
  | { readonly kind: 'text'; readonly most: number; readonly needed: boolean }
  | { readonly kind: 'money' }
  | { readonly kind: 'hours'; readonly least: number; readonly most: number }
  | { readonly kind: 'percent'; readonly least: number; readonly most: number }
  | { readonly kind: 'number'; readonly unit: string; readonly least: number; readonly most: number }
  | { readonly kind: 'day' }

/** Where a question is asked: once, or at each bay of the kinds named. */
export type Each = 'job' | readonly BayKind[]

/** What a blank or "not measured yet" leads to: parts on HOLD, a stated assumption, or nothing (the suggestion is used). */
export type Missing = 'hold' | 'assume' | 'suggest'

/** Reads what the plan used for another field at this place (or once for the job): for `when`. Undefined = not known yet. */
export type Look = <T>(field: Field<T>) => T | undefined

/** One question and the schema of its answer, in one record. Add a question = one field in one chapter. */
export interface Field<T = unknown> {
  readonly id: string
  readonly chapter: ChapterId
  readonly section: Section
  readonly each: Each
  readonly schema: z.ZodType<T>
  readonly entry: Entry
  readonly asks: (place: NamedBay | undefined) => string
  /** Two or three words for the review and the narrow column: `back width`. */
  readonly short: string
  readonly why: string
  /** How to measure it on site, an example, and what happens when it is left out. */
  readonly help: string
  readonly missing: Missing
  readonly when: (look: Look, place: NamedBay | undefined) => boolean
}

/** Address of a field's answer at a place. */
export const questionKey = (place: Place, field: Pick<Field, 'id'>): QuestionKey => `${place}.${field.id}`
