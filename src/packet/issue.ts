import type { Stamp } from '../documents/document.ts'
import type { Job } from '../job/job.ts'
import { issuedParts } from '../plan/compare/compare.ts'
import type { Plan } from '../plan/plan.ts'

/** The job with this packet noted as handed out, so that the next revision can say what changed. */
export const withIssue = (plan: Plan, stamp: Stamp): Job => ({
  ...plan.job,
  issued: [
    ...plan.job.issued,
    { revision: stamp.revision, on: stamp.date, tool: stamp.tool, parts: { ...issuedParts(plan) } },
  ],
})
