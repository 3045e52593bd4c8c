import type { Plan } from '../plan/plan.ts'
import type { Day } from '../units/day.ts'

/** Who reads a document. What each may see is listed in `for-helper.ts` and its like, and in `audience-fields.ts`, field by field. */
export type Reader = 'helper' | 'supplier' | 'office' | 'client' | 'everyone'

/** The only input of a packet beside the job: same job and stamp, same bytes. */
export interface Stamp {
  readonly revision: number
  readonly date: Day
  /** `nichework 0.1.0` */
  readonly tool: string
}

/** Bytes that documents need and that live outside the code. */
export interface Assets {
  readonly fonts: { readonly regular: Uint8Array; readonly bold: Uint8Array }
  /** Template texts by file name: `quote.md`. */
  readonly templates: Readonly<Record<string, string>>
}

export interface PacketFile {
  /** Inside the zip, with `/`: `helper/cut-list.xlsx`. */
  readonly path: string
  readonly bytes: Uint8Array
}

/** One document of the packet. Add one = one folder + one line in `list.ts`. */
export interface PacketDocument {
  readonly id: string
  readonly reader: Reader
  /** What it is, in a few words, for start-here and the demo's summary: `cut list`. */
  readonly says: string
  /** Whether this plan needs it. */
  readonly needed: (plan: Plan) => boolean
  /** Its file or files (one request for each thing bought in). Pure apart from the format libraries. */
  readonly write: (plan: Plan, assets: Assets, stamp: Stamp) => Promise<readonly PacketFile[]>
}
