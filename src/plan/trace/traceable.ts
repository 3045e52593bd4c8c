import type { Trace } from './trace-node.ts'
import { partTraces } from './trace-parts.ts'
import { totalTraces } from './trace-totals.ts'
import { questionTraces, workingTraces } from './trace-workings.ts'
import type { Tracing } from './tracing.ts'

/** Something that can be asked about, under any of its names. */
export interface Traceable {
  readonly names: readonly string[]
  readonly trace: () => Trace
}

/** Everything of a job that answers "where from?": totals, parts, purchases, tasks, joints, questions, formulas. */
export const traceables = (on: Tracing): readonly Traceable[] => [
  ...totalTraces(on),
  ...partTraces(on),
  ...questionTraces(on),
  ...workingTraces(on),
]

/** Where what goes by this name comes from; pieces that share a mark give one trace each. Empty: nothing goes by it. */
export function tracesNamed(known: readonly Traceable[], name: string): readonly Trace[] {
  const wanted = plainName(name)
  return known.filter(({ names }) => names.some((n) => plainName(n) === wanted)).map(({ trace }) => trace())
}

const plainName = (name: string): string => name.trim().toLowerCase().replace(/\s+/g, ' ')
