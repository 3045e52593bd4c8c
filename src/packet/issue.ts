import type { Stamp } from '../documents/document.ts'
import type { Job } from '../job/job.ts'
import type { Plan } from '../plan/plan.ts'

/** The job with this packet noted as handed out, so that the next revision can say what changed. */
export const withIssue = (plan: Plan, stamp: Stamp): Job => ({
  ...plan.job,
  issued: [
    ...plan.job.issued,
    { revision: stamp.revision, on: stamp.date, tool: stamp.tool, parts: issuedParts(plan) },
  ],
})

/** Finished size by mark, in the job's own words. */
const issuedParts = ({ parts, show }: Plan): Record<string, string> =>
  Object.fromEntries(
    parts.map((part) => [
      part.piece === undefined ? part.mark : `${part.mark} ${part.piece}`,
      [part.length, part.width, part.thickness].map(show.length).join(' × '),
    ]),
  )
