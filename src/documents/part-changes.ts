import type { Issue } from '../job/job.ts'
import { changesSince } from '../plan/compare/compare.ts'
import type { Plan } from '../plan/plan.ts'

/** One part that is not what it was when a packet was handed out, in words. */
export type PartChange = string

/** All changes of parts since one packet. */
export interface ChangesSince {
  readonly revision: number
  readonly parts: readonly PartChange[]
}

/** The changed parts since a packet, those to cut again first. */
export const partChanges = (issue: Issue, plan: Plan): readonly PartChange[] =>
  changesSince(issue, plan).map((change) => change.says)

/** The changes since the newest packet before `revision`; undefined = there was none. */
export const newestBefore = (all: readonly ChangesSince[], revision: number): readonly PartChange[] | undefined =>
  all.filter((c) => c.revision < revision).toSorted((a, b) => b.revision - a.revision)[0]?.parts
