import type { Session } from '../interview/session.ts'
import { messageOn, questionOn } from '../interview/session.ts'
import { showDay } from '../units/day.ts'
import { showMoney } from '../units/money.ts'
import { cellsOf, fitCells } from './cells.ts'
import { elevation } from './elevation.ts'
import {
  BLANK,
  type Frame,
  fact,
  framed,
  heading,
  inWindow,
  type Layout,
  lineText,
  marked,
  type Size,
  sentence,
} from './frame.ts'
import { type Home, homePage } from './home.ts'
import type { Look } from './look.ts'
import { helpPage, messagePage } from './other-pages.ts'
import { jobName } from './place-words.ts'
import { questionPage } from './question-page.ts'
import { reviewPage } from './review-page.ts'
import { whereFromPage } from './where-from-page.ts'

/** What the whole screen shows. */
export type Scene = { readonly kind: 'home'; readonly home: Home } | JobScene

/** A page of one job. */
export type JobScene =
  | { readonly kind: 'interview'; readonly session: Session }
  | { readonly kind: 'packing'; readonly session: Session; readonly words: readonly string[] }
  | { readonly kind: 'done'; readonly session: Session; readonly path: string; readonly files: number }

/** The lines of a scene for a window of this size: at most one fewer than the window has. */
export const sceneFrame = (scene: Scene, size: Size, look: Look): Frame =>
  inWindow(size, look, (layout) => scenePage(layout, scene))

function scenePage(layout: Layout, scene: Scene): Frame {
  switch (scene.kind) {
    case 'home':
      return homePage(layout, scene.home)
    case 'interview':
      return withElevation(layout, scene.session, interviewPage(layout, scene.session))
    case 'packing':
      return packingPage(layout, scene.session, scene.words)
    case 'done':
      return donePage(layout, scene)
  }
}

function interviewPage(layout: Layout, session: Session): Frame {
  const { page } = session
  const question = questionOn(session)
  const message = messageOn(page, session.plan)
  if (question !== undefined) return questionPage(layout, session, question)
  if (message !== undefined) return messagePage(layout, session, message)
  if (page.kind === 'where-from') return whereFromPage(layout, session, page)
  return page.kind === 'help' ? helpPage(layout, session, page.key) : reviewPage(layout, session)
}

const PICTURE_TOP = 4
/** Lines under the picture that stay free: its caption, the effect and the keys. */
const PICTURE_FOOT = 7
const LEAST_PICTURE = 24

/** The wall beside the question, where the window is wide enough; its caption says in words what is marked. */
function withElevation(layout: Layout, session: Session, frame: Frame): Frame {
  const from = layout.width + 2
  const columns = Math.min(layout.size.columns - from - 1, 60)
  if (columns < LEAST_PICTURE) return frame
  const bay = questionOn(session)?.bay
  const picture = elevation(
    session.plan,
    { columns, rows: layout.lines - PICTURE_TOP - PICTURE_FOOT },
    layout.look,
    bay?.id,
  )
  if (picture.length === 0) return frame
  const caption = bay === undefined ? 'seen from the room' : `asked about: ${bay.name}`
  const beside = ['', ...picture, fitCells(caption, columns)]
  return frame.map((line, i) => {
    const piece = beside[i - PICTURE_TOP + 1] ?? ''
    const gap = from - cellsOf(lineText(line))
    return piece === '' || gap < 0 ? line : [...line, { text: ' '.repeat(gap) + piece }]
  })
}

function packingPage(layout: Layout, session: Session, words: readonly string[]): Frame {
  const rows = words.slice(-(layout.lines - 10)).flatMap((w, i) => fact(layout, i === 0 ? 'so far' : '', w))
  return framed(layout, {
    head: heading(layout, `${jobName(session.job)} · Write the packet`, session.saved),
    body: [...sentence(layout, 'Writing the packet', 'bold'), BLANK, ...rows],
    effect: '',
    keys: 'Nothing half-written is left behind · Ctrl+C leave',
  })
}

function donePage(layout: Layout, { session, path, files }: Extract<Scene, { kind: 'done' }>): Frame {
  const { plan } = session
  const held = plan.parts.filter((p) => p.waitsFor.length > 0).length
  return framed(layout, {
    head: heading(layout, `${jobName(session.job)} · packet written`, session.saved),
    body: [
      ...sentence(layout, 'The packet is written.', 'bold'),
      BLANK,
      ...fact(layout, 'it is here', path),
      ...fact(layout, 'holds', `${files} files; prices and the client’s data are in office and client only`),
      BLANK,
      ...fact(layout, 'boxes', String(plan.boxes.boxes.length)),
      ...fact(layout, 'shelves', String(plan.shelves.shelves.length)),
      ...fact(layout, 'finish', showDay(plan.calendar.finish)),
      ...fact(layout, 'price', `${showMoney(plan.price.total)} ${plan.show.currency}, with tax`),
      ...fact(layout, 'on HOLD', held === 0 ? 'nothing' : `${held} pieces: measure what start here names`),
      BLANK,
      ...marked(layout, fact(layout, 'next', 'print start here, then hand each folder to whom it is for')),
    ],
    effect: session.problem,
    keys: 'Enter list of jobs · Esc check answers · Ctrl+C leave',
  })
}
