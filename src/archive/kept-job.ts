import * as z from 'zod'
import { jobIn, openJson } from '../job/open.ts'
import { InputUnreadable } from '../things/failure.ts'
import type { QuestionKey } from '../things/field.ts'
import type { KeptJob } from './job-store.ts'

const beside = z.object({
  at: z.string().optional(),
  undo: z.array(z.object({ key: z.string(), before: z.unknown().optional(), after: z.unknown().optional() })),
})

/** The kept job in the body of a save. Throws InputUnreadable or JobTooNew as a job file does. */
export function readKeptJob(body: string, file: string): KeptJob {
  const document = openJson(Buffer.from(body), file)
  const { value } = document
  if (typeof value !== 'object' || value === null || !('job' in value)) {
    throw new InputUnreadable(file, ['there is no job in this save.'])
  }
  const job = jobIn({ value: value.job, lineAt: (path) => document.lineAt(['job', ...path]) }, file)
  const read = beside.safeParse(value)
  if (!read.success) throw new InputUnreadable(file, ['its list of undo steps is not as nichework writes it.'])
  const { at, undo } = read.data
  return {
    job,
    at: at as KeptJob['at'],
    undo: undo.map((step) => ({ key: step.key as QuestionKey, before: step.before, after: step.after })),
  }
}
