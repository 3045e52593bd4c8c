import type { Plan } from './plan.ts'

/** One difference between two plans, in words ready to print; `weight` ranks it (larger first). */
export interface Change {
  readonly weight: number
  readonly says: string
  /** Part mark when a part changed. */
  readonly mark?: string
}

/** What differs between two plans, most important first: parts, sheets, messages, hours, price, finish date. */
export function comparePlans(_before: Plan, _after: Plan): readonly Change[] {
  return []
}

/** The top one or two changes as the effect line: `run 39 → two boxes 19 1/2; finish Thu 10 Dec → Tue 8 Dec`. */
export const effectLine = (changes: readonly Change[]): string =>
  changes
    .slice(0, 2)
    .map((c) => c.says)
    .join('; ')
