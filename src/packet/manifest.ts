import * as z from 'zod'
import type { PacketFile, Stamp } from '../documents/document.ts'
import { SCHEMA_VERSION } from '../job/job.ts'
import { sha256 } from './sha256.ts'

export const MANIFEST_PATH = 'manifest.json'
export const JOB_PATH = 'job.json'

const manifestSchema = z.object({
  format: z.literal('nichework-packet'),
  /** Version of this list itself. */
  version: z.int().min(1),
  /** Version of `job.json`. */
  schema: z.int().min(1),
  tool: z.string(),
  revision: z.int().min(1),
  date: z.iso.date(),
  files: z.array(
    z.object({
      path: z.string(),
      bytes: z.int().min(0),
      sha256: z.string().regex(/^[0-9a-f]{64}$/),
    }),
  ),
})
export type Manifest = z.infer<typeof manifestSchema>

/** What a packet holds, each file with its SHA-256: it shows damage, not who made the packet. */
export const manifestOf = (files: readonly PacketFile[], stamp: Stamp): Manifest => ({
  format: 'nichework-packet',
  version: 1,
  schema: SCHEMA_VERSION,
  tool: stamp.tool,
  revision: stamp.revision,
  date: stamp.date,
  files: files.map(({ path, bytes }) => ({ path, bytes: bytes.length, sha256: sha256(bytes) })),
})

/** The manifest as a file of the packet. */
export const manifestFile = (files: readonly PacketFile[], stamp: Stamp): PacketFile => ({
  path: MANIFEST_PATH,
  bytes: Buffer.from(`${JSON.stringify(manifestOf(files, stamp), undefined, 2)}\n`),
})

/** A manifest read back, or undefined when it is not one. */
export function readManifest(value: unknown): Manifest | undefined {
  const result = manifestSchema.safeParse(value)
  return result.success ? result.data : undefined
}
