import { EMPTY_DRAFT } from '../interview/draft.ts'
import type { LineEdit } from '../interview/line.ts'
import type { Session } from '../interview/session.ts'
import type { SessionEvent } from '../interview/stepped.ts'
import { draftHere } from '../interview/type-into.ts'
import type { Layout } from './frame.ts'
import type { Key, KeyName } from './keys/key.ts'
import { reviewPageMove } from './review-page.ts'
import { whereFromPageMove } from './where-from-page.ts'

const PAGE = 10
const ALL = 100_000

const EDITS: Partial<Readonly<Record<KeyName, LineEdit>>> = {
  backspace: { kind: 'backspace' },
  delete: { kind: 'delete' },
  left: { kind: 'left' },
  right: { kind: 'right' },
  home: { kind: 'start' },
  end: { kind: 'end' },
  clear: { kind: 'clear' },
  'clear-word': { kind: 'clear-word' },
}
const MOVES: Partial<Readonly<Record<KeyName, number>>> = {
  up: -1,
  down: 1,
  'page-up': -PAGE,
  'page-down': PAGE,
}
const REVIEW_MOVES: Partial<Readonly<Record<KeyName, number>>> = {
  up: -1,
  down: 1,
  home: -ALL,
  end: ALL,
}

/** What a key means on the page the person looks at, laid out as it is seen; undefined = nothing here. */
export function eventOf(key: Key, session: Session, layout: Layout): SessionEvent | undefined {
  if (key.kind === 'paste') return { kind: 'edit', edit: { kind: 'insert', text: key.text } }
  if (key.kind === 'text') return textEvent(key.text, session)
  switch (key.name) {
    case 'enter':
      return { kind: 'enter' }
    case 'esc':
      return { kind: 'back' }
    case 'f1':
      return { kind: 'help' }
    case 'f2':
      return { kind: 'where-from' }
    case 'f4':
      return { kind: 'review' }
    default:
      return otherKey(key.name, session, layout)
  }
}

/** `?` is help while nothing is typed, and a letter after that. */
function textEvent(text: string, session: Session): SessionEvent {
  const empty = (draftHere(session) ?? EMPTY_DRAFT).line.text === ''
  if (text === '?' && empty && session.page.kind === 'question') return { kind: 'help' }
  return { kind: 'edit', edit: { kind: 'insert', text } }
}

function otherKey(name: KeyName, session: Session, layout: Layout): SessionEvent | undefined {
  const { page } = session
  if (page.kind === 'review' && name === 'tab') return { kind: 'where-from' }
  const by = page.kind === 'review' || page.kind === 'where-from' ? linesMove(name, session, layout) : MOVES[name]
  if (by !== undefined) return { kind: 'move', by }
  const edit = EDITS[name]
  return edit === undefined ? undefined : { kind: 'edit', edit }
}

/** In the review and on the where-from page a window further is as many lines as were seen. */
function linesMove(name: KeyName, session: Session, layout: Layout): number | undefined {
  if (name !== 'page-down' && name !== 'page-up') return REVIEW_MOVES[name]
  const way = name === 'page-down' ? 'down' : 'up'
  return session.page.kind === 'where-from'
    ? whereFromPageMove(layout, session.page, way)
    : reviewPageMove(layout, session, way)
}
