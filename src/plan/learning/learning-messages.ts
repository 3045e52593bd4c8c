import type { QuestionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { Closed, Learned } from './learned-factor.ts'

/** A closed job so far off its estimate that it does not count in full. */
export const learnedClipped = messageKind<{ readonly work: string; readonly jobs: string }>({
  code: 'N9',
  weight: 'note',
  source: 'common practice, no source',
  says: ({ work, jobs }) => ({
    short: `${work}: ${jobs} counted as three times or a third of the estimate.`,
    why: 'So far off, a job says more about that job than about your pace.',
    todo: 'Look whether the hours were booked on the right work; leave the job out where they were not.',
  }),
})

/** The note for what was clipped, when anything was. */
export const learningMessages = (
  work: string,
  {
    closed,
    learned,
    about,
  }: { readonly closed: readonly Closed[]; readonly learned: Learned; readonly about: QuestionKey },
): readonly Message[] =>
  learned.clipped.length === 0
    ? []
    : [
        raise(
          learnedClipped,
          { about, place: 'closed jobs' },
          { work, jobs: learned.clipped.map((i) => ratioWords(closed[i])).join(', ') },
        ),
      ]

const ratioWords = (job: Closed | undefined): string =>
  job === undefined ? '' : `${job.actual} against ${job.estimated} estimated`
