import { resolve } from 'node:path'
import type { Job } from '../job/job.ts'
import type { Progress } from '../packet/contents.ts'
import { type MadePacket, makePacket } from '../packet/make-packet.ts'
import { nodeClock } from '../ports/node/clock.ts'
import { nodeFiles } from '../ports/node/files.ts'
import { nodeRandomId } from '../ports/node/random-id.ts'
import { loadAssets } from './assets.ts'
import { dataFolder } from './data-folder.ts'
import { stampDate } from './stamp-date.ts'
import type { Surroundings } from './surroundings.ts'
import { TOOL } from './version.ts'

/** Writes a job's packet to `out`, with the real disk, clock, fonts and templates. Throws as `makePacket`. */
export async function orderPacket(
  job: Job,
  out: string,
  around: Surroundings,
  onProgress: Progress,
): Promise<MadePacket> {
  const date = stampDate(around, nodeClock)
  const assets = await loadAssets((await dataFolder(around)).folder)
  // The format libraries are loaded with the documents, after the first line of progress.
  const { DOCUMENTS } = await import('../documents/list.ts')
  const target = { files: nodeFiles, randomId: nodeRandomId, path: resolve(out), date }
  return makePacket({ job, target, tool: TOOL, assets, documents: DOCUMENTS, onProgress })
}

/** One line for each document as it is drawn. */
export const progressLines =
  (around: Surroundings): Progress =>
  ({ says, number, of }) =>
    around.say(`  ${number} of ${of}: ${says}`)
