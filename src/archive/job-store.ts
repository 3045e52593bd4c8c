import type { Job } from '../job/job.ts'
import type { QuestionKey } from '../things/field.ts'

/** One step that can be put back: the answer before it (undefined = there was none). */
export interface UndoStep {
  readonly key: QuestionKey
  readonly before: unknown
  readonly after: unknown
}

/** What is kept of a job on disk: the job, where the interview stood, and the last undo steps. */
export interface KeptJob {
  readonly job: Job
  /** The question the person was at; undefined at the very start. `review` = the check-answers page. */
  readonly at: QuestionKey | 'review' | undefined
  readonly undo: readonly UndoStep[]
  /** The same place in words, for the list of jobs, which is shown before any question is loaded: `Wall, left alcove, ceiling`. */
  readonly where?: string
}

export interface JobSummary {
  readonly id: string
  readonly title: string
  readonly at: KeptJob['at']
  /** In words where it stands; undefined when the save does not say it. */
  readonly where?: string | undefined
  readonly answers: number
  readonly damaged: boolean
}

/** Where jobs are kept: every save is a new file, flushed and renamed before the promise resolves. */
export interface JobStore {
  readonly list: () => Promise<readonly JobSummary[]>
  /** The newest save that verifies. Throws InputUnreadable when there is none. `notes` says what was set aside. */
  readonly load: (id: string) => Promise<{ readonly kept: KeptJob; readonly notes: readonly string[] }>
  /** Resolves when the job is on disk. Throws DiskProblem; the earlier saves stay as they were. */
  readonly save: (kept: KeptJob) => Promise<void>
  /** Folder of the store, to be named to the person. */
  readonly folder: string
}
