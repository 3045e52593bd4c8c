import type { Assets, PacketDocument, PacketFile, Stamp } from '../documents/document.ts'
import { checkTemplates } from '../documents/words/template.ts'
import type { Job } from '../job/job.ts'
import type { Plan } from '../plan/plan.ts'
import { JOB_PATH, MANIFEST_PATH, manifestFile } from './manifest.ts'

/** Called before each document: its words, how many there are, which this is. */
export type Progress = (step: { readonly says: string; readonly number: number; readonly of: number }) => void

export interface PacketRecipe {
  readonly plan: Plan
  /** The job as it goes into the packet, this issue noted. */
  readonly job: Job
  readonly stamp: Stamp
  readonly assets: Assets
  readonly documents: readonly PacketDocument[]
  readonly onProgress: Progress
}

/** Every file of a packet: the documents this plan needs, the job, the manifest. Same recipe, same bytes. */
export async function packetContents(recipe: PacketRecipe): Promise<readonly PacketFile[]> {
  const { plan, stamp, assets, onProgress } = recipe
  // A broken text is named before anything is made.
  checkTemplates(assets.templates)
  const needed = recipe.documents.filter((document) => document.needed(plan))
  const files: PacketFile[] = []
  for (const [index, document] of needed.entries()) {
    onProgress({ says: document.says, number: index + 1, of: needed.length })
    files.push(...(await document.write(plan, assets, stamp)))
  }
  const all = [...files, { path: JOB_PATH, bytes: Buffer.from(`${JSON.stringify(recipe.job, undefined, 2)}\n`) }]
  const sorted = all.sort((a, b) => (a.path < b.path ? -1 : 1))
  checkPaths(sorted)
  return [...sorted, manifestFile(sorted, stamp)]
}

/** Folders and names of our own only, plain on every system: no device names of Windows, no dots at the end. */
const PATH = /^(?:[a-z0-9-]{1,60}\/){0,2}[a-z0-9-]{1,60}\.[a-z]{2,4}$/
const DEVICE = /(?:^|\/)(?:con|prn|aux|nul|com\d|lpt\d)\./

function checkPaths(files: readonly PacketFile[]): void {
  const seen = new Set<string>([MANIFEST_PATH])
  for (const { path } of files) {
    if (!PATH.test(path) || DEVICE.test(path)) throw new Error(`A packet holds no file named ${path}.`)
    if (seen.has(path)) throw new Error(`Two documents write ${path}.`)
    seen.add(path)
  }
}
