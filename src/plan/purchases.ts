import type { Purchase } from '../things/supplies.ts'
import type { Built } from './built.ts'
import type { PlanContext } from './context.ts'

/** Everything to buy, rounded up to packs in this one place. */
export function purchases(_context: PlanContext, _built: Built): readonly Purchase[] {
  return []
}
