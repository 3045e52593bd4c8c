import { waitingConfirms } from '../interview/confirmed.ts'
import type { Plan } from '../plan/plan.ts'
import { NicheworkError } from '../things/failure.ts'
import type { Message } from '../things/message.ts'

/** What keeps a packet from being written. */
export interface Held {
  readonly stops: readonly Message[]
  /** Confirms without an answer, or with one given for other numbers. */
  readonly unanswered: readonly Message[]
}

/** Thrown when a packet is asked for whose plan has a stop or an unanswered confirm; nothing was written. */
export class PacketHeld extends NicheworkError {
  override readonly name = 'PacketHeld'
  constructor(readonly held: Held) {
    super(`The packet is not written: ${[...held.stops, ...held.unanswered].map((m) => m.short).join(' · ')}`)
  }
}

/** The messages of a plan that hold its packet. */
export const heldBy = (plan: Pick<Plan, 'job' | 'messages'>): Held => ({
  stops: plan.messages.filter((m) => m.weight === 'stop'),
  unanswered: waitingConfirms(plan.job, plan.messages),
})
