import type { Drawing } from '../geometry/drawing.ts'
import type { Scale } from '../geometry/scale.ts'

/** A box to tick by hand, 5 mm square. */
export const TICK = { tick: true } as const
export type Cell = string | typeof TICK

export interface TableColumn {
  readonly head: string
  /** Millimetres. */
  readonly width: number
  readonly align?: 'left' | 'right'
  readonly bold?: boolean
}

export interface TableRow {
  readonly cells: readonly Cell[]
  /** The black bar in the margin: stop and read. */
  readonly bar?: boolean
}

export interface Table {
  readonly kind: 'table'
  readonly columns: readonly TableColumn[]
  readonly rows: readonly TableRow[]
  /** Small type, where long rows must share a page with a drawing. */
  readonly small?: true
}

/** A word on the left and its facts on the right: what the pages are made of. */
export interface Fact {
  readonly kind: 'fact'
  readonly word: string
  readonly lines: readonly string[]
  /** The black bar in the margin: stop and read. */
  readonly bar?: boolean
  readonly weight?: 'plain' | 'bold' | 'total'
  /** At the right end of the first line: an amount, hours, a blank to write in. */
  readonly right?: string
  readonly tick?: boolean
}

/** The small tree every page is written from; a writer turns it into bytes. */
export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  /** A part of its own within a section, over both columns; its name is repeated at the head of each page it runs over. */
  | { readonly kind: 'chapter'; readonly text: string; readonly blocks: readonly Block[] }
  | Fact
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  /** A caution: bar and all. */
  | { readonly kind: 'note'; readonly text: string }
  | Table
  | { readonly kind: 'drawing'; readonly drawing: Drawing; readonly scale: Scale }
  /** Never split over two pages when it fits on one. */
  | { readonly kind: 'together'; readonly blocks: readonly Block[] }
  | { readonly kind: 'space' }

/** Pages that begin on a sheet of their own. */
export interface Section {
  readonly turned: 'upright' | 'landscape'
  readonly title: string
  /** The small line under the title. */
  readonly under: string
  readonly blocks: readonly Block[]
}

/** A whole paper document before it is bytes. */
export interface Paper {
  /** `install sequence`: in the foot of each page. */
  readonly name: string
  readonly job: string
  readonly size: 'letter' | 'a4'
  readonly sections: readonly Section[]
}

/** `what  facts`, plain. */
export const fact = (word: string, ...lines: readonly string[]): Fact => ({ kind: 'fact', word, lines })
/** A fact with the black bar. */
export const warned = (word: string, ...lines: readonly string[]): Fact => ({ kind: 'fact', word, lines, bar: true })
export const heading = (text: string): Block => ({ kind: 'heading', text })
export const chapter = (text: string, ...blocks: readonly Block[]): Block => ({ kind: 'chapter', text, blocks })
export const together = (...blocks: readonly Block[]): Block => ({ kind: 'together', blocks })
export const SPACE: Block = { kind: 'space' }

/** One line a fact; nothing when there is nothing to say. */
export const factOf = (word: string, lines: readonly string[]): readonly Fact[] =>
  lines.length === 0 ? [] : [fact(word, ...lines)]
