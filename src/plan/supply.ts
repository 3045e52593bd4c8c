import type { Message } from '../things/message.ts'
import type { Part } from '../things/part.ts'
import type { Day } from '../units/day.ts'
import type { Money } from '../units/money.ts'
import type { PlanContext } from './context.ts'
import type { FrontPlan } from './fronts.ts'

/** One line of a request to an outside shop. No client data, no prices. */
export interface RequestLine {
  readonly mark: string
  readonly item: string
  readonly size: string
  readonly quantity: number
  readonly details: readonly string[]
  readonly hold: boolean
}

/** One thing bought in: what is asked for, and what it was quoted at (office only). */
export interface SupplyRequest {
  readonly id: 'boxes' | 'fronts' | 'spraying'
  readonly title: string
  readonly lines: readonly RequestLine[]
  readonly finish: readonly string[]
  readonly drilling: readonly string[]
  readonly area: number | undefined
  readonly leadDays: number
  readonly quoted: Money
  readonly quoteKnown: 'invented' | 'answered'
  readonly neededBy?: Day
}

export interface SupplyPlan {
  /** The parts with who makes each: every part is in exactly one of cut list or one request. */
  readonly parts: readonly Part[]
  readonly requests: readonly SupplyRequest[]
  readonly sprayedOut: boolean
  readonly delivery: Money
  readonly messages: readonly Message[]
}

export function supply(_context: PlanContext, parts: readonly Part[], _fronts: FrontPlan): SupplyPlan {
  return { parts, requests: [], sprayedOut: false, delivery: 0 as Money, messages: [] }
}
