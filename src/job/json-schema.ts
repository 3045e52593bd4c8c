import * as z from 'zod'
import { jobSchema } from './job.ts'

/** The JSON Schema (draft 2020-12) of a job file, generated from the schema the program itself checks with. */
export const jobJsonSchema = (): object => ({
  title: 'A job of nichework',
  description: 'Lengths are whole nanometres, money whole cents, days 2026-12-10.',
  ...z.toJSONSchema(jobSchema, { target: 'draft-2020-12', io: 'input', reused: 'ref' }),
})

/** The text of `shared/job.schema.json`. */
export const jobJsonSchemaText = (): string => `${JSON.stringify(jobJsonSchema(), undefined, 2)}\n`
