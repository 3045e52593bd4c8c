import { InputUnreadable, JobTooNew } from '../things/failure.ts'
import { describeFault } from './describe-fault.ts'
import { type Job, jobSchema, SCHEMA_VERSION } from './job.ts'
import { type JsonDocument, readJson } from './read-json.ts'

/** Largest job file read, in bytes. */
export const JOB_MOST_BYTES = 8 * 1024 * 1024

/**
 * The checked job in the bytes of a job file. `file` is its name for the words of a fault.
 * Throws InputUnreadable with every fault and its place, JobTooNew when a newer nichework wrote it.
 */
export function openJob(bytes: Uint8Array, file: string): Job {
  return jobIn(openJson(bytes, file), file)
}

/** The JSON document in the bytes of a file. Throws InputUnreadable. */
export function openJson(bytes: Uint8Array, file: string): JsonDocument {
  if (bytes.length > JOB_MOST_BYTES) {
    throw new InputUnreadable(file, [`this is ${bytes.length} bytes; a job file has at most ${JOB_MOST_BYTES}.`])
  }
  const reading = readJson(decoded(bytes, file))
  if (!reading.ok)
    throw new InputUnreadable(file, [`line ${reading.line}: this is not JSON as nichework reads it: ${reading.fault}`])
  return reading.document
}

/** The checked job in a JSON document. Throws as `openJob`. */
export function jobIn(document: JsonDocument, file: string): Job {
  checkVersion(document, file)
  const result = jobSchema.safeParse(document.value)
  if (!result.success)
    throw new InputUnreadable(
      file,
      result.error.issues.flatMap((issue) => describeFault(issue, document)),
    )
  return result.data as Job
}

const UTF16_MARKS: readonly (readonly [number, number])[] = [
  [0xff, 0xfe],
  [0xfe, 0xff],
]

function decoded(bytes: Uint8Array, file: string): string {
  if (bytes.length === 0) throw new InputUnreadable(file, ['the file is empty.'])
  if (UTF16_MARKS.some(([first, second]) => bytes[0] === first && bytes[1] === second)) {
    throw new InputUnreadable(file, ['the text is in UTF-16; save it again as UTF-8.'])
  }
  try {
    // A mark at the start (BOM) is taken off by the decoder.
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch (cause) {
    throw new InputUnreadable(file, ['this is not text in UTF-8, so it is neither a job file nor an answers file.'], {
      cause,
    })
  }
}

function checkVersion({ value, lineAt }: JsonDocument, file: string): void {
  const found = typeof value === 'object' && value !== null && 'schema' in value ? value.schema : undefined
  if (typeof found === 'number' && Number.isInteger(found) && found > SCHEMA_VERSION)
    throw new JobTooNew(file, found, SCHEMA_VERSION)
  if (found === SCHEMA_VERSION) return
  const words =
    found === undefined
      ? `there is no "schema": a job file of nichework begins with "schema": ${SCHEMA_VERSION}.`
      : `line ${lineAt(['schema'])}, schema: ${JSON.stringify(found)} is not a version of a job file. This nichework reads ${SCHEMA_VERSION}.`
  throw new InputUnreadable(file, [words])
}
