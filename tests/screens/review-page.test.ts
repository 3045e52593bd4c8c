import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readAnswers } from '../../src/interview/answers.ts'
import { reviewOf } from '../../src/interview/review.ts'
import { type Session, startSession } from '../../src/interview/session.ts'
import { step } from '../../src/interview/step.ts'
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
const count = reviewOf(job, review.plan).length

const SIZES = [
  { columns: 60, rows: 20 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
]

describe.each(SIZES)('check answers at $columns×$rows', (size) => {
  const press = (session: Session, name: Extract<Key, { kind: 'key' }>['name']): Session => {
    const event = eventOf({ kind: 'key', name }, session, layoutOf(size, LOOK))
    return event === undefined ? session : step(session, event).session
  }
  const lines = (session: Session) => sceneFrame({ kind: 'interview', session }, size, LOOK).map(lineText)
  const position = (session: Session) => {
    const [, from, to, of] = / (\d+) to (\d+) of (\d+) lines/.exec(lines(session).join('\n')) ?? []
    return { from: Number(from), to: Number(to), of: Number(of) }
  }

  it('every line is seen by PgDn, each page beginning with the last line of the one before', () => {
    let session = review
    let { from, to } = position(session)
    expect(from).toBe(1)
    for (let pages = 0; to < count; pages++) {
      expect(pages).toBeLessThan(count)
      session = press(session, 'page-down')
      const next = position(session)
      expect(next.from).toBeLessThanOrEqual(to)
      expect(next.to).toBeGreaterThan(to)
      ;({ from, to } = next)
    }
    expect(position(press(review, 'end')).to).toBe(count)
    for (let pages = 0; from > 1; pages++) {
      expect(pages).toBeLessThan(count)
      session = press(session, 'page-up')
      const next = position(session)
      expect(next.to).toBeGreaterThanOrEqual(from)
      from = next.from
    }
    expect(position(press(press(review, 'end'), 'home')).from).toBe(1)
  })

  it('uses the height: at most the lines of one more row stay empty', () => {
    for (let session = review, at = 0; at < count; at += 10, session = press(session, 'page-down')) {
      const body = lines(session).slice(2, -2)
      const empty = body.length - body.findLastIndex((line) => line.slice(0, 70).trim() !== '') - 1
      expect(empty, lines(session).join('\n')).toBeLessThanOrEqual(5)
    }
  })

  it('says the chapter at the head of each page', () => {
    const chapters = press(review, 'end')
    const rows = lines(press(chapters, 'page-up')).slice(5, -2)
    expect(rows[0]?.slice(0, 16).trim()).not.toBe('')
  })
})
