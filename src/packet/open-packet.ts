import type { Job } from '../job/job.ts'
import { JOB_MOST_BYTES, openJob, openJson } from '../job/open.ts'
import { InputUnreadable, JobTooNew } from '../things/failure.ts'
import { JOB_PATH, MANIFEST_PATH, type Manifest, readManifest } from './manifest.ts'
import { readZip } from './read-zip.ts'
import { sha256 } from './sha256.ts'

const MOST_ENTRIES = 200
const MANIFEST_MOST_BYTES = 256 * 1024
const LIMITS = new Map([
  [JOB_PATH, JOB_MOST_BYTES],
  [MANIFEST_PATH, MANIFEST_MOST_BYTES],
])

export interface OpenedPacket {
  readonly job: Job
  /** Undefined when it is missing or not one; the job is read all the same. */
  readonly manifest: Manifest | undefined
  /** What the person should know, in words. */
  readonly notes: readonly string[]
}

/** Whether bytes begin as a zip does. */
export const looksLikeZip = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b

/**
 * The job in a packet. Two named entries are read into memory; nothing of a packet is ever written out or followed.
 * Throws InputUnreadable or JobTooNew.
 */
export async function openPacket(bytes: Uint8Array, file: string): Promise<OpenedPacket> {
  const entries = await readZip(bytes, file, { entries: MOST_ENTRIES, bytes: (name) => LIMITS.get(name) })
  const jobBytes = entries.get(JOB_PATH)
  if (jobBytes === undefined) {
    throw new InputUnreadable(file, [
      `this zip has no ${JOB_PATH}: it is not a whole job packet. A reader's own copy holds no job; open the office's packet.`,
    ])
  }
  const manifest = manifestIn(entries.get(MANIFEST_PATH), file)
  const job = jobOf(jobBytes, file, manifest)
  return { job, manifest, notes: notesOf(jobBytes, manifest) }
}

function jobOf(bytes: Uint8Array, file: string, manifest: Manifest | undefined): Job {
  try {
    return openJob(bytes, `${file}, ${JOB_PATH}`)
  } catch (error) {
    if (error instanceof JobTooNew || manifest === undefined || !(error instanceof InputUnreadable)) throw error
    const from = `It was written as revision ${manifest.revision} on ${manifest.date} by ${manifest.tool}.`
    throw new InputUnreadable(file, [...error.faults, from], { cause: error })
  }
}

function manifestIn(bytes: Uint8Array | undefined, file: string): Manifest | undefined {
  if (bytes === undefined) return undefined
  try {
    return readManifest(openJson(bytes, `${file}, ${MANIFEST_PATH}`).value)
  } catch (error) {
    // The manifest is a check, not a source: without it the job is read and the note says so.
    if (error instanceof InputUnreadable) return undefined
    throw error
  }
}

function notesOf(jobBytes: Uint8Array, manifest: Manifest | undefined): readonly string[] {
  if (manifest === undefined) {
    return [
      `The packet's list of files (${MANIFEST_PATH}) is missing or damaged: whether the rest is whole cannot be told.`,
    ]
  }
  const listed = manifest.files.find((entry) => entry.path === JOB_PATH)
  return listed?.sha256 === sha256(jobBytes)
    ? []
    : [`Changed since the packet was written: ${JOB_PATH}. Check the answers before you use them.`]
}
