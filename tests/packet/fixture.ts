import type { PacketDocument } from '../../src/documents/document.ts'
import { emptyJob } from '../../src/job/job.ts'
import { type MadePacket, type PacketOrder, packPlan } from '../../src/packet/make-packet.ts'
import { makePlan } from '../../src/plan/plan.ts'
import type { Files } from '../../src/ports/files.ts'
import { day } from '../../src/units/day.ts'
import { ASSETS } from '../documents/assets.ts'

/** A packet of two small papers, on a disk of the test's own. */
export const smallOrder = (files: Files, change: Partial<PacketOrder> = {}): PacketOrder => ({
  job: emptyJob('packet-1', '2026-11-25'),
  target: { files, randomId: (letters) => 'r'.repeat(letters), path: '/data/packet.zip', date: day('2026-11-26') },
  tool: 'nichework test',
  assets: { fonts: { regular: new Uint8Array(), bold: new Uint8Array() }, templates: ASSETS.templates },
  documents: [paper('helper/cut-list.txt', 'cuts '.repeat(2000)), paper('client/quote.txt', 'quote')],
  onProgress: () => undefined,
  ...change,
})

export const paper = (path: string, text: string): PacketDocument => ({
  id: path,
  reader: 'helper',
  says: path,
  needed: () => true,
  write: async (_plan, _assets, stamp) => [{ path, bytes: Buffer.from(`${text} ${stamp.revision} ${stamp.date}`) }],
})

/** Writes the packet of an order whatever the plan has to say about the job: these tests are about the zip. */
export const packed = (order: PacketOrder): Promise<MadePacket> =>
  packPlan({ ...makePlan(order.job, 'quick'), messages: [] }, order)
