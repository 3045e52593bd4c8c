import type { Session, WhereFromPage } from '../interview/session.ts'
import { type SeenRow, seenRows } from '../interview/where-from.ts'
import { cellsOf, padCells, wrapCells } from './cells.ts'
import { BLANK, bodyRoom, type Frame, framed, heading, type Layout, marked, sentence } from './frame.ts'
import { inSigns } from './look.ts'
import { jobName, savedWords } from './place-words.ts'
import { pageDown, pageUp, rowWindow } from './row-window.ts'

const KEYS = 'Enter open or close a line · ↑ ↓ PgDn move · Esc back'
const INDENT = 2
/** Share of the width that names and values take before the words. */
const WORDS_FROM = 0.42
const LEAST_WORDS = 26

/** Where a number comes from: each number above those it was come by; Enter opens and closes a line. */
export function whereFromPage(layout: Layout, session: Session, page: WhereFromPage): Frame {
  const { rows, heights, top, room } = viewOf(layout, page)
  const { from, to } = rowWindow(heights, page.line, room)
  const shown = rows.slice(from, to).flatMap((row, i) => {
    const frame = rowFrame(layout, row)
    return from + i === page.line ? marked(layout, frame) : frame
  })
  return framed(layout, {
    head: heading(layout, `${jobName(session.job)} · Where from`, savedWords(session)),
    body: [...top, ...shown.slice(0, room), ...position(layout, { from, to, of: rows.length })],
    effect: '',
    keys: KEYS,
  })
}

/** By how many lines one window further or back leads. */
export function whereFromPageMove(layout: Layout, page: WhereFromPage, way: 'down' | 'up'): number {
  const { heights, room } = viewOf(layout, page)
  return (way === 'down' ? pageDown(heights, page.line, room) : pageUp(heights, page.line, room)) - page.line
}

function viewOf(layout: Layout, page: WhereFromPage) {
  const rows = seenRows(page)
  const says = page.says.flatMap((words) => sentence(layout, words)).slice(0, MOST_SAID)
  const top = [...sentence(layout, page.title, 'bold'), ...says, BLANK]
  return {
    rows,
    top,
    heights: rows.map((row) => rowFrame(layout, row).length),
    room: bodyRoom(layout, KEYS) - top.length - 1,
  }
}

/** Lines under the title, so that a small window still shows the tree. */
const MOST_SAID = 4

function rowFrame(layout: Layout, { depth, name, value, words, under, folded }: SeenRow): Frame {
  const width = layout.width - layout.margin
  const sign = under === 0 ? '' : folded ? '+ ' : '- '
  const head = inSigns(`${' '.repeat(depth * INDENT)}${sign}${name}  ${value}`.trimEnd(), layout.look)
  const beside = Math.max(Math.floor(width * WORDS_FROM), cellsOf(head) + 2)
  const at = beside + LEAST_WORDS <= width ? beside : (depth + 1) * INDENT + 2
  const lines = words === '' ? [] : wrapCells(inSigns(words, layout.look), width - at)
  const below = at === beside ? lines.slice(1) : lines
  const first = at === beside && lines.length > 0 ? padCells(head, at) + lines[0] : head
  return [first, ...below.map((line) => ' '.repeat(at) + line)].flatMap((text) => wrapped(layout, text, width))
}

/** A name too long for the window goes on in the next line. */
const wrapped = (layout: Layout, text: string, width: number): Frame =>
  (cellsOf(text) <= width ? [text] : wrapCells(text, width)).map((line) => [
    { text: ' '.repeat(layout.margin) },
    { text: line },
  ])

function position(
  layout: Layout,
  { from, to, of }: { readonly from: number; readonly to: number; readonly of: number },
): Frame {
  const words = `${from + 1} to ${to} of ${of} lines`
  return to - from === of ? [] : [[{ text: ' '.repeat(Math.max(0, layout.width - cellsOf(words))) }, { text: words }]]
}
