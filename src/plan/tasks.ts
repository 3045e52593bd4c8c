import type { Task } from '../things/task.ts'
import type { Built } from './built.ts'
import type { PlanContext } from './context.ts'

/** All tasks with a quantity, in their written order; those without are dropped and their `after` passes through. */
export function tasks(_context: PlanContext, _built: Built): readonly Task[] {
  return []
}
