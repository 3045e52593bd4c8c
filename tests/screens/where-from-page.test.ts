import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readAnswers } from '../../src/interview/answers.ts'
import { reviewOf } from '../../src/interview/review.ts'
import { type Session, startSession } from '../../src/interview/session.ts'
import { step } from '../../src/interview/step.ts'
import { seenRows } from '../../src/interview/where-from.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { layoutOf, lineText } from '../../src/screens/frame.ts'
import type { Key } from '../../src/screens/keys/key.ts'
import { sceneFrame } from '../../src/screens/scene.ts'
import { eventOf } from '../../src/screens/session-keys.ts'
import { day } from '../../src/units/day.ts'

const TODAY = day('2026-11-12')
const LOOK = { signs: 'unicode', colour: false } as const
const { job } = readAnswers(JSON.parse(readFileSync('demo/alcoves-inch/answers.json', 'utf8')), {
  id: 'test-job',
  today: TODAY,
})
const review = startSession({ job, at: 'review', undo: [] }, makePlan(job, 'quick'), TODAY)
const SIZES = [
  { columns: 60, rows: 20 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
]

describe.each(SIZES)('where from at $columns×$rows', (size) => {
  const press = (session: Session, name: Extract<Key, { kind: 'key' }>['name']): Session => {
    const event = eventOf({ kind: 'key', name }, session, layoutOf(size, LOOK))
    return event === undefined ? session : step(session, event).session
  }
  const lines = (session: Session) => sceneFrame({ kind: 'interview', session }, size, LOOK).map(lineText)
  const atLine = (line: number): Session => ({ ...review, page: { kind: 'review', line } })
  const priceLine = reviewOf(job, review.plan).findIndex((l) => l.kind === 'write')

  it('opens with Tab on the line that writes the packet: the price, and Esc leads back to that line', () => {
    const open = press(atLine(priceLine), 'tab')
    const text = lines(open).join('\n')
    expect(text).toContain('The price')
    expect(text).toMatch(/total {2}[\d,]+\.\d\d USD/)
    expect(press(open, 'esc').page).toEqual({ kind: 'review', line: priceLine })
  })

  it('never is wider or higher than the window, whatever line was chosen and whatever is open', () => {
    for (let line = 0; line <= priceLine; line += 45) {
      let session = press(atLine(line), 'f2')
      for (let i = 0; i < 6; i++) {
        const drawn = lines(session)
        expect(drawn.length).toBeLessThan(size.rows)
        for (const text of drawn) expect(text.length, text).toBeLessThanOrEqual(size.columns)
        session = press(press(session, 'enter'), 'down')
      }
    }
  })

  it('Enter closes a line and opens it again; the last line is reached by PgDn', () => {
    const open = press(atLine(priceLine), 'tab')
    const rows = (s: Session) => (s.page.kind === 'where-from' ? seenRows(s.page).length : 0)
    const closed = press(open, 'enter')
    expect(rows(closed)).toBeLessThan(rows(open))
    expect(rows(press(closed, 'enter'))).toBe(rows(open))
    let session = open
    for (let i = 0; i < rows(open); i++) session = press(session, 'page-down')
    expect(session.page.kind === 'where-from' && session.page.line).toBe(rows(open) - 1)
  })

  it('F2 at a question tells where its suggestion is from, and Esc leads back to the question', () => {
    const question = { ...review, page: { kind: 'question', key: 'job.boxHeight' } } as const
    const open = press(question, 'f2')
    expect(open.page.kind).toBe('where-from')
    expect(press(open, 'esc').page).toEqual(question.page)
  })
})
