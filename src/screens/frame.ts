import type { Change } from '../plan/compare/change.ts'
import { effectLine } from '../plan/compare/effect-line.ts'
import { cellsOf, fitCells, padCells, wrapCells } from './cells.ts'
import { inSigns, type Look } from './look.ts'

/** A piece of a line. `mark` is the pencil mark in the margin, the only coloured thing. */
export interface Span {
  readonly text: string
  readonly weight?: 'bold' | 'mark'
}
export type FrameLine = readonly Span[]
export type Frame = readonly FrameLine[]

export interface Size {
  readonly columns: number
  readonly rows: number
}

export const LEAST_COLUMNS = 60
export const LEAST_ROWS = 20
const ELEVATION_FROM = 100
const MOST_TEXT = 80
const TEXT_BESIDE_ELEVATION = 70

/** Where things stand in a window: margin, the narrow column of words, the wide one of facts. */
export interface Layout {
  readonly size: Size
  readonly look: Look
  readonly margin: number
  /** Column at which facts begin. */
  readonly facts: number
  /** Column at which text ends. */
  readonly width: number
  /** Lines of a frame: one less than the window has, because a full one makes the terminal scroll. */
  readonly lines: number
}

export function layoutOf(size: Size, look: Look): Layout {
  const narrow = size.columns < MOST_TEXT
  const width = size.columns >= ELEVATION_FROM ? TEXT_BESIDE_ELEVATION : Math.min(size.columns, MOST_TEXT)
  return { size, look, margin: narrow ? 2 : 3, facts: narrow ? 14 : 16, width: width - 1, lines: size.rows - 1 }
}

/** One fact with its word: `why   Walls lean …`; longer facts and longer words go on below, each in its column. */
export function fact(layout: Layout, word: string, text: string, weight?: 'bold'): Frame {
  const room = layout.facts - layout.margin
  const words = wrapCells(inSigns(word, layout.look), room - 1)
  const lines = wrapCells(inSigns(text, layout.look), layout.width - layout.facts)
  return Array.from({ length: Math.max(words.length, lines.length) }, (_, i) => [
    { text: ' '.repeat(layout.margin) },
    { text: padCells(words[i] ?? '', room), ...(weight === undefined ? {} : { weight }) },
    { text: lines[i] ?? '' },
  ])
}

/** The same with the pencil mark in the margin: you are here. */
export const marked = (layout: Layout, frame: Frame): Frame =>
  frame.map((line, i) => (i === 0 ? [{ text: markIn(layout), weight: 'mark' }, ...line.slice(1)] : line))

const markIn = ({ look, margin }: Layout): string => padCells(inSigns(margin > 2 ? ' ▌' : '▌', look), margin)

/** Text over the whole width. */
export const sentence = (layout: Layout, text: string, weight?: 'bold'): Frame =>
  wrapCells(inSigns(text, layout.look), layout.width - layout.margin).map((line) => [
    { text: ' '.repeat(layout.margin) },
    { text: line, ...(weight === undefined ? {} : { weight }) },
  ])

export const BLANK: FrameLine = []

/** Line 1: where we are, and at the right whether it is saved. */
export function heading(layout: Layout, left: string, right: string): FrameLine {
  const room = layout.size.columns - layout.margin - cellsOf(right) - 3
  const shown = inSigns(left, layout.look)
  const text = cellsOf(shown) <= room ? shown : fitCells(shown, room)
  const used = layout.margin + cellsOf(text)
  const gap = Math.max(1, Math.min(layout.size.columns, MOST_TEXT) - 1 - cellsOf(right) - used)
  return [{ text: ' '.repeat(layout.margin) }, { text }, { text: ' '.repeat(gap) }, { text: right }]
}

export interface PageParts {
  readonly head: FrameLine
  readonly body: Frame
  readonly effect: string
  readonly keys: string
}

/** Puts a page's parts on their fixed rows: place, body from row 3, effect near the foot, keys on the last line. */
export function framed(layout: Layout, page: PageParts): Frame {
  const effect = page.effect === '' ? [] : effectFact(layout, page.effect).slice(0, EFFECT_ROWS)
  const foot: Frame = keyRows(layout, page.keys).slice(0, 2)
  const room = layout.lines - 2 - foot.length - 1
  const body = page.body.slice(0, room)
  const gap = room - body.length
  const effects = gap > effect.length ? effect : []
  return [
    page.head,
    BLANK,
    ...body,
    ...Array.from({ length: gap - effects.length }, () => BLANK),
    ...effects,
    BLANK,
    ...foot,
  ]
}

const EFFECT_ROWS = 2
const effectFact = (layout: Layout, text: string): Frame => fact(layout, 'effect', text)

/** What the last answer changed: as many whole changes as the rows of the effect hold. */
export const effectWords = (layout: Layout, changes: readonly Change[]): string =>
  effectLine(changes, (text) => effectFact(layout, text).length <= EFFECT_ROWS)

/** Lines the effect takes from a page's body, the blank one before it too. */
export function effectRows(layout: Layout, changes: readonly Change[]): number {
  const words = effectWords(layout, changes)
  return words === '' ? 0 : effectFact(layout, words).length + 1
}

const BETWEEN_KEYS = ' · '

/** The keys on as few lines as hold them; a key and its word stay together. */
function keyRows(layout: Layout, keys: string): Frame {
  const room = layout.width - layout.margin
  const lines = keys.split(BETWEEN_KEYS).reduce<readonly string[]>((done, key) => {
    const longer = [...done.slice(-1), key].join(BETWEEN_KEYS)
    return cellsOf(inSigns(longer, layout.look)) <= room ? done.slice(0, -1).concat(longer) : done.concat(key)
  }, [])
  return lines.flatMap((line) => sentence(layout, line))
}

/** How many lines a page's body has at most. */
export const bodyRoom = (layout: Layout, keys: string): number =>
  layout.lines - 3 - Math.min(2, keyRows(layout, keys).length)

/** A blank line between groups, where the window is high enough for white space. */
export const airy = (layout: Layout): Frame => (layout.size.rows < AIRY_ROWS ? [] : [BLANK])
const AIRY_ROWS = 24

/** The plain text of a frame's line. */
export const lineText = (line: FrameLine): string => line.map((s) => s.text).join('')

/** A scene as lines for a window of any size. */
export type Draw = (size: Size, look: Look) => Frame

/** A page laid out for the window; in a window that is too small, the sentence that says so. */
export const inWindow = (size: Size, look: Look, page: (layout: Layout) => Frame): Frame =>
  size.columns < LEAST_COLUMNS || size.rows < LEAST_ROWS ? tooSmall(size) : page(layoutOf(size, look))

const tooSmall = ({ columns, rows }: Size): Frame => {
  const text = `Make the window at least ${LEAST_COLUMNS} wide and ${LEAST_ROWS} high (now ${columns}×${rows}). Your answers are saved.`
  return wrapCells(text, Math.max(10, columns - 1))
    .slice(0, Math.max(1, rows - 1))
    .map((line) => [{ text: line }])
}
