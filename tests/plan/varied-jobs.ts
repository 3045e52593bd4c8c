import fc from 'fast-check'
import { FIELDS } from '../../src/job/fields.ts'
import { answerOf, baysOf, type Job, withAnswer } from '../../src/job/job.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { type ChapterId, type Field, questionKey } from '../../src/things/field.ts'
import type { Place } from '../../src/things/place.ts'
import { measuredJobs } from './random-jobs.ts'

const CHAPTERS: readonly ChapterId[] = ['cabinets', 'shelves', 'mantel', 'finish', 'hardware', 'make-or-buy', 'install']
/** Every question of how it is built that is answered by a word, yes or no, a count or a length: new ones come in by themselves. */
const CHOICES = FIELDS.filter((f) => f.section === 'choices' && CHAPTERS.includes(f.chapter) && f.missing === 'suggest')

interface Whim {
  readonly field: number
  readonly place: number
  readonly pick: number
  readonly off: number
}
const whim: fc.Arbitrary<Whim> = fc.record({
  field: fc.nat(CHOICES.length - 1),
  place: fc.nat(3),
  pick: fc.nat(1000),
  off: fc.integer({ min: -12, max: 12 }),
})

const SIXTEENTH = 1_587_500
const FEW = 4

/** The answer a whim gives, or undefined where the question has none of this kind. A length stays near what is suggested. */
function answerTo(job: Job, field: Field, place: Place, { pick, off }: Whim): unknown {
  const { entry } = field
  switch (entry.kind) {
    case 'choice':
      return entry.options[pick % entry.options.length]?.id
    case 'yes-no':
      return pick % 2 === 0
    case 'count':
      return entry.least + (pick % (Math.min(entry.most - entry.least, FEW) + 1))
    case 'length': {
      const suggested = makePlan(job, 'quick').used.get(questionKey(place, field))?.value
      return typeof suggested === 'number' ? suggested + off * SIXTEENTH : undefined
    }
    default:
      return undefined
  }
}

function withWhim(job: Job, one: Whim): Job {
  const field = CHOICES[one.field]
  if (field === undefined) return job
  const here = baysOf(job).filter((b) => field.each !== 'job' && field.each.includes(b.kind))
  const place = field.each === 'job' ? 'job' : here[one.place % Math.max(1, here.length)]?.id
  if (place === undefined || answerOf(job, field, place) !== undefined) return job
  const value = answerTo(job, field, place, one)
  return value !== undefined && field.schema.safeParse(value).success
    ? withAnswer<unknown>(job, field, place, value)
    : job
}

/** Measured jobs with up to six choices of any chapter taken at random: styles, counts, fits, sizes a little off what is suggested. */
export const variedJobs: fc.Arbitrary<Job> = fc
  .tuple(measuredJobs, fc.array(whim, { maxLength: 6 }))
  .map(([job, whims]) => whims.reduce(withWhim, job))
