import { type ReviewLine, reviewCounts, reviewOf } from '../interview/review.ts'
import type { Session } from '../interview/session.ts'
import { cellsOf } from './cells.ts'
import {
  BLANK,
  bodyRoom,
  effectRows,
  effectWords,
  type Frame,
  type FrameLine,
  fact,
  framed,
  heading,
  type Layout,
  marked,
  sentence,
} from './frame.ts'
import { jobName, savedWords } from './place-words.ts'
import { sayRows } from './question-page.ts'
import { pageDown, pageUp, rowWindow } from './row-window.ts'

const KEYS = 'Enter go there · PgDn more · Tab where from · Esc back'
const ASKS = 'Is it all as it should be?'

/** Check answers: what stops first, then every answer; Enter leads to the line's question and back. */
export function reviewPage(layout: Layout, session: Session): Frame {
  const view = reviewView(layout, session)
  const { from, to } = rowWindow(view.heights, view.chosen, view.room)
  const shown = view.lines.slice(from, to).map((line, i) => {
    const before = i === 0 ? undefined : view.lines[from + i - 1]
    const row = rowOf(layout, before?.word === line.word ? { ...line, word: '' } : line)
    return from + i === view.chosen ? marked(layout, row) : row
  })
  const position = `${from + 1} to ${to} of ${view.lines.length} lines`
  return framed(layout, {
    head: heading(layout, `${jobName(session.job)} · Check answers`, savedWords(session)),
    body: [withPosition(layout, position), ...view.top, ...shown.flat().slice(0, view.room), ...view.said],
    effect: effectWords(layout, session.effect),
    keys: KEYS,
  })
}

/** By how many lines one window further or back leads; every line is seen on the way. */
export function reviewPageMove(layout: Layout, session: Session, way: 'down' | 'up'): number {
  const { heights, chosen, room } = reviewView(layout, session)
  return (way === 'down' ? pageDown(heights, chosen, room) : pageUp(heights, chosen, room)) - chosen
}

interface ReviewView {
  readonly lines: readonly ReviewLine[]
  readonly heights: readonly number[]
  readonly chosen: number
  readonly top: Frame
  readonly said: Frame
  /** Lines of the window the list has for itself. */
  readonly room: number
}

function reviewView(layout: Layout, session: Session): ReviewView {
  const lines = reviewOf(session.job, session.plan, session.ownFigures)
  const line = session.page.kind === 'review' ? session.page.line : 0
  const top = [...sentence(layout, reviewCounts(lines)), BLANK]
  const said = [
    ...sayRows(layout, session.said),
    ...(session.problem === '' ? [] : fact(layout, 'look', session.problem)),
  ]
  const effect = effectRows(layout, session.effect)
  return {
    lines,
    heights: lines.map((l) => rowOf(layout, l).length),
    chosen: Math.min(line, lines.length - 1),
    top,
    said,
    room: bodyRoom(layout, KEYS) - 1 - top.length - said.length - effect,
  }
}

const rowOf = (layout: Layout, { word, says }: ReviewLine): Frame =>
  fact(layout, word, says, word === 'stop' || word === 'write' ? 'bold' : undefined)

/** What the page asks, and at the right which lines of how many are seen. */
function withPosition(layout: Layout, position: string): FrameLine {
  const [asks = []] = sentence(layout, ASKS, 'bold')
  const gap = layout.width - layout.margin - cellsOf(ASKS) - cellsOf(position)
  return [...asks, { text: ' '.repeat(Math.max(1, gap)) + position }]
}
