import type { Assets, PacketDocument, Stamp } from '../documents/document.ts'
import type { Job } from '../job/job.ts'
import { makePlan, type Plan } from '../plan/plan.ts'
import { heldBy, PacketHeld } from './allowed.ts'
import { type Progress, packetContents } from './contents.ts'
import { withIssue } from './issue.ts'
import { type PacketTarget, writePacket } from './write-packet.ts'

export interface PacketOrder {
  readonly job: Job
  readonly target: PacketTarget
  /** `nichework 0.1.0` */
  readonly tool: string
  readonly assets: Assets
  readonly documents: readonly PacketDocument[]
  readonly onProgress: Progress
}

export interface MadePacket {
  readonly path: string
  /** Paths inside the zip. */
  readonly files: readonly string[]
  /** The job with this issue noted. */
  readonly job: Job
  readonly plan: Plan
}

/** Plans a job and writes its next packet. Throws PacketHeld when the plan has a stop or an unanswered confirm, DiskProblem, TemplateBroken. */
export async function makePacket(order: PacketOrder): Promise<MadePacket> {
  return packPlan(makePlan(order.job, 'thorough'), order)
}

/** Writes the next packet of a plan that is made already. Throws as `makePacket`. */
export async function packPlan(plan: Plan, order: Omit<PacketOrder, 'job'>): Promise<MadePacket> {
  const { target, assets, documents, onProgress } = order
  const held = heldBy(plan)
  if (held.stops.length + held.unanswered.length > 0) throw new PacketHeld(held)
  const stamp: Stamp = { revision: plan.job.issued.length + 1, date: target.date, tool: order.tool }
  const job = withIssue(plan, stamp)
  const contents = await packetContents({ plan, job, stamp, assets, documents, onProgress })
  await writePacket(contents, target)
  return { path: target.path, files: contents.map((file) => file.path), job, plan }
}
