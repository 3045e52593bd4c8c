import * as z from 'zod'
import { type OwnFigures, ownFiguresSchema } from '../figures/own-figures.ts'
import { type Answer, type Field, NOT_MEASURED, type QuestionKey, type Section } from '../things/field.ts'
import { type NamedBay, namedBays, type Place } from '../things/place.ts'
import { bays } from './chapters/wall.ts'
import { stored } from './entries.ts'
import { FIELDS } from './fields.ts'

export const SCHEMA_VERSION = 1

/** Answers by place (`job` or a bay's id), then by field id. */
export type Answers = Readonly<Record<Place, Readonly<Record<string, unknown>>>>

/** A confirmation given: which message, where, when, and the numbers it was given for. */
export interface Confirmation {
  readonly code: string
  readonly about: QuestionKey
  readonly on: string
  /** The message's values when it was confirmed; other values ask again. */
  readonly values: Readonly<Record<string, number | string>>
}

/** A packet handed out: so that the next revision can say what changed. */
export interface Issue {
  readonly revision: number
  readonly on: string
  readonly tool: string
  /** Finished size by part mark, in words. */
  readonly parts: Readonly<Record<string, string>>
}

/** The whole job as it is kept: what was measured, what was decided, what is private. */
export interface Job {
  readonly schema: typeof SCHEMA_VERSION
  /** Random, given once; seeds and file names come from it. */
  readonly id: string
  /** Day it was begun: the plan has no clock, suggestions of dates start here. */
  readonly created: string
  readonly demo?: boolean | undefined
  readonly facts: Answers
  readonly choices: Answers
  readonly private: Answers
  readonly confirmed: readonly Confirmation[]
  readonly issued: readonly Issue[]
  /** The person's own figures as they were when the job was begun: it gives the same plan wherever it is opened. */
  readonly figures?: OwnFigures | undefined
}

const at = (section: Section, where: 'job' | 'bay') =>
  z
    .strictObject(
      Object.fromEntries(
        FIELDS.filter((f) => f.section === section && (f.each === 'job') === (where === 'job')).map((f) => [
          f.id,
          stored(f).optional(),
        ]),
      ),
    )
    .optional()

const sectionSchema = (section: Section) => z.object({ job: at(section, 'job') }).catchall(at(section, 'bay').unwrap())

const values = z.record(z.string(), z.union([z.number(), z.string()]))

/** The schema of `job.json`; its JSON Schema is generated from it. Unknown answers are refused by name. */
export const jobSchema = z.strictObject({
  schema: z.literal(SCHEMA_VERSION),
  id: z.string().regex(/^[a-z0-9-]{4,40}$/),
  created: z.iso.date(),
  demo: z.boolean().optional(),
  facts: sectionSchema('facts'),
  choices: sectionSchema('choices'),
  private: sectionSchema('private'),
  confirmed: z.array(z.strictObject({ code: z.string(), about: z.string(), on: z.iso.date(), values })),
  issued: z.array(
    z.strictObject({
      revision: z.int().min(1),
      on: z.iso.date(),
      tool: z.string(),
      parts: z.record(z.string(), z.string()),
    }),
  ),
  figures: ownFiguresSchema.optional(),
})

/** A job with nothing answered. */
export const emptyJob = (id: string, created: string): Job => ({
  schema: SCHEMA_VERSION,
  id,
  created,
  facts: {},
  choices: {},
  private: {},
  confirmed: [],
  issued: [],
})

/** The job reckoned with these figures of a person's own instead of those it carries: stamped at its beginning, or to bring it up to date. */
export function withOwnFigures(job: Job, own: OwnFigures): Job {
  const { figures: _old, ...rest } = job
  return Object.keys(own).length === 0 ? rest : { ...rest, figures: own }
}

/** What was answered for a field at a place: its value, "not measured", or undefined. */
export const answerOf = <T>(job: Job, field: Field<T>, place: Place): Answer<T> | undefined =>
  job[field.section][place]?.[field.id] as Answer<T> | undefined

/** The job with one answer put in (or taken out, with undefined). Nothing else changes; later answers stay. */
export function withAnswer<T>(job: Job, field: Field<T>, place: Place, value: Answer<T> | undefined): Job {
  const section = job[field.section]
  const { [field.id]: _old, ...rest } = section[place] ?? {}
  const here = value === undefined ? rest : { ...rest, [field.id]: value }
  return { ...job, [field.section]: { ...section, [place]: here } }
}

/** The bays of the wall, named; empty until the wall is answered. */
export function baysOf(job: Job): readonly NamedBay[] {
  const answer = answerOf(job, bays, 'job')
  return answer === undefined || answer === NOT_MEASURED ? [] : namedBays(answer)
}
