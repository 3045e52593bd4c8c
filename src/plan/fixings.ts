import type { Message } from '../things/message.ts'
import type { Part, PartId } from '../things/part.ts'
import type { Mass } from '../units/mass.ts'
import type { BoxPlan } from './boxes.ts'
import type { PlanContext } from './context.ts'
import type { FrontPlan } from './fronts.ts'
import type { ShelfPlan } from './shelves.ts'

/** One kind of fastener or hardware: exact count, spare not included. */
export interface FixingLine {
  readonly id: string
  readonly item: string
  readonly use: string
  readonly count: number
  readonly unit: 'piece' | 'm' | 'kg' | 'l'
}

export interface FixingPlan {
  readonly lines: readonly FixingLine[]
  readonly masses: ReadonlyMap<PartId, Mass>
  /** Mass of each box by mark, and of the heaviest thing to carry. */
  readonly boxMasses: ReadonlyMap<string, Mass>
  /** Marks that need two people, with the reason in words. */
  readonly twoPeople: ReadonlyMap<string, string>
  readonly messages: readonly Message[]
}

export function fixings(
  _context: PlanContext,
  _parts: readonly Part[],
  _boxes: BoxPlan,
  _fronts: FrontPlan,
  _shelves: ShelfPlan,
): FixingPlan {
  return { lines: [], masses: new Map(), boxMasses: new Map(), twoPeople: new Map(), messages: [] }
}
