import { createHash } from 'node:crypto'
import type { KeptJob } from './job-store.ts'

/** What the header line of a save says. */
export interface SaveHeader {
  /** 1, 2 … per job. This number, never a time, decides which save is newer. */
  readonly number: number
  readonly id: string
  /** Id of the save this one was made from; `none` for the first. */
  readonly parent: string
  /** UTC, to the minute. */
  readonly savedAt: string
}

export interface Save {
  readonly header: SaveHeader
  /** JSON text of the kept job, checked against the header's length and hash. */
  readonly body: string
}

export const NO_PARENT = 'none'
/** Beginning of the name of a save that is still being written. */
export const SAVING = '.saving-'
const FORMAT = 'nichework-save'
export const SAVE_FORMAT_VERSION = 1
const NAME = /^(\d{6,})-([a-z0-9]{4,16})\.job$/
const HEADER =
  /^nichework-save (\d+) (\d+) ([a-z0-9]{4,16}) (none|[a-z0-9]{4,16}) (\d{4}-\d\d-\d\dT\d\d:\d\dZ) (\d+) ([0-9a-f]{64})$/
const HEADER_MOST = 300

/** `000042-7f3a.job` */
export const saveName = (header: Pick<SaveHeader, 'number' | 'id'>): string =>
  `${String(header.number).padStart(6, '0')}-${header.id}.job`

/** Number and id in a save's name, or undefined for another file. */
export function readSaveName(name: string): Pick<SaveHeader, 'number' | 'id'> | undefined {
  const match = NAME.exec(name)
  return match?.[1] === undefined || match[2] === undefined ? undefined : { number: Number(match[1]), id: match[2] }
}

/** The bytes of a save: a header line with length and SHA-256, then JSON. */
export function writeSave(header: SaveHeader, kept: KeptJob): Uint8Array {
  const body = JSON.stringify({ job: kept.job, at: kept.at, undo: kept.undo })
  const start = headerStart(SAVE_FORMAT_VERSION, header, Buffer.byteLength(body))
  return Buffer.from(`${start} ${seal(start, body)}\n${body}`)
}

/** A save read back; `damaged` when a byte of it is not as it was written, `newer` when its form is not known here. */
export function readSave(bytes: Uint8Array): Save | 'damaged' | 'newer' {
  const end = bytes.indexOf('\n'.charCodeAt(0))
  if (end < 0 || end > HEADER_MOST) return 'damaged'
  const match = HEADER.exec(Buffer.from(bytes.subarray(0, end)).toString('latin1'))
  if (match === null) return 'damaged'
  const [, version = '', number = '', id = '', parent = '', savedAt = '', length = '', hash = ''] = match
  const header = { number: Number(number), id, parent, savedAt }
  const rest = bytes.subarray(end + 1)
  const start = headerStart(Number(version), header, Number(length))
  if (rest.length !== Number(length) || seal(start, rest) !== hash) return 'damaged'
  return Number(version) > SAVE_FORMAT_VERSION ? 'newer' : { header, body: Buffer.from(rest).toString('utf8') }
}

const headerStart = (version: number, h: SaveHeader, length: number): string =>
  [FORMAT, version, h.number, h.id, h.parent, h.savedAt, length].join(' ')

/** The hash covers the header's other words too: a changed number or parent is damage as well. */
const seal = (start: string, body: string | Uint8Array): string =>
  createHash('sha256').update(start).update('\n').update(body).digest('hex')
