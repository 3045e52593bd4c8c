import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readAnswers } from '../../src/interview/answers.ts'
import { everyQuestion } from '../../src/interview/asked.ts'
import { askingOf } from '../../src/interview/asking.ts'
import { enter } from '../../src/interview/enter.ts'
import { messagePageOf, type Session, startSession } from '../../src/interview/session.ts'
import { title } from '../../src/job/chapters/job.ts'
import { bays } from '../../src/job/chapters/wall.ts'
import { FIELDS } from '../../src/job/fields.ts'
import { emptyJob, type Job, withAnswer } from '../../src/job/job.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { cellsOf } from '../../src/screens/cells.ts'
import { fact, layoutOf, lineText, type Size } from '../../src/screens/frame.ts'
import { sceneFrame } from '../../src/screens/scene.ts'
import { day } from '../../src/units/day.ts'

const TODAY = day('2026-11-12')
const demo = (name: string) =>
  readAnswers(JSON.parse(readFileSync(`demo/${name}/answers.json`, 'utf8')), { id: 'test-job', today: TODAY }).job
const empty = withAnswer(emptyJob('test-job', TODAY), bays, 'job', [
  { id: 'a', kind: 'alcove' },
  { id: 'b', kind: 'breast' },
  { id: 'c', kind: 'alcove' },
  { id: 'd', kind: 'flat' },
])
const wide = withAnswer(demo('niche-metric'), title, 'job', '木'.repeat(40))
const JOBS: readonly (readonly [string, Job])[] = [
  ['empty', empty],
  ['inch demo', demo('alcoves-inch')],
  ['metric demo with a wide name', wide],
]
const SIZES: readonly Size[] = [
  { columns: 60, rows: 20 },
  { columns: 80, rows: 24 },
  { columns: 100, rows: 30 },
  { columns: 120, rows: 40 },
  { columns: 200, rows: 60 },
]
const UNICODE = { signs: 'unicode', colour: true } as const
const ASCII = { signs: 'ascii', colour: false } as const

const linesOf = (session: Session, size: Size, look: typeof UNICODE | typeof ASCII = UNICODE) =>
  sceneFrame({ kind: 'interview', session }, size, look).map(lineText)

/** All words of a text stand on the screen, uncut and in order. */
const shows = (lines: readonly string[], text: string, from: number) =>
  lines
    .map((l) => l.slice(from).slice(0, 90))
    .join(' ')
    .replace(/\s+/g, ' ')
    .includes(text.replace(/\s+/g, ' ').trim())

describe.each(JOBS)('every question of the job: %s', (_, job) => {
  const plan = makePlan(job, 'quick')
  const base = startSession({ job, at: undefined, undo: [] }, plan, TODAY)
  const questions = everyQuestion(job)
  describe.each(SIZES)('at $columns×$rows', (size) => {
    it('fits: no line over the width, never more lines than the window has less one, question and why uncut, keys last', () => {
      for (const q of questions) {
        const session: Session = { ...base, asked: questions, page: { kind: 'question', key: q.key } }
        const lines = linesOf(session, size)
        expect(lines.length, q.key).toBe(size.rows - 1)
        for (const line of lines) expect(cellsOf(line), `${q.key}: ${line}`).toBeLessThanOrEqual(size.columns)
        const text = lines.map((l) => l.slice(0, 70))
        expect(shows(size.columns >= 100 ? text : lines, q.field.asks(q.bay), 0), q.key).toBe(true)
        const facts = size.columns >= 100 ? text : lines
        const from = size.columns < 80 ? 14 : 16
        expect(shows(facts, q.field.why, from), q.key).toBe(true)
        if (!q.field.asks(q.bay).includes('…')) expect(lines.join('\n'), q.key).not.toContain('…')
        expect(lines.slice(-2).join(' '), q.key).toContain('? help')
        expect(lines.join('\n'), q.key).toMatch(/_/)
      }
    })
    it('shows what is wrong with a wrong answer, uncut', () => {
      for (const q of questions) {
        const refused = enter('zzz 1/3', askingOf(q, job, plan, TODAY))
        if (refused.kind !== 'refused') continue
        const said = { kind: 'error', says: refused.says } as const
        const session: Session = { ...base, asked: questions, page: { kind: 'question', key: q.key }, said }
        const lines = linesOf(session, size).map((l) => (size.columns >= 100 ? l.slice(0, 70) : l))
        expect(shows(lines, refused.says, size.columns < 80 ? 14 : 16), `${q.key}\n${lines.join('\n')}`).toBe(true)
      }
    })
  })
  it('says the same without a sign beyond ASCII', () => {
    for (const q of questions) {
      const session: Session = { ...base, asked: questions, page: { kind: 'question', key: q.key } }
      const own = linesOf(session, { columns: 120, rows: 40 }, ASCII).slice(1).join('')
      expect(own.replace(/[\u00C0-\u024F\u4E00-\u9FFF²³]/gu, ''), q.key).toMatch(/^[ -~]*$/)
    }
  })
  it('help, review and messages fit', () => {
    for (const size of SIZES) {
      for (const q of questions) {
        const page = { kind: 'help', key: q.key, onward: { kind: 'question', key: q.key } } as const
        const lines = linesOf({ ...base, asked: questions, page }, size)
        expect(lines.length).toBe(size.rows - 1)
        for (const line of lines) expect(cellsOf(line)).toBeLessThanOrEqual(size.columns)
      }
      for (const line of [0, 5, 40, 90]) {
        const lines = linesOf({ ...base, page: { kind: 'review', line } }, size)
        expect(lines.length).toBe(size.rows - 1)
        for (const text of lines) expect(cellsOf(text), text).toBeLessThanOrEqual(size.columns)
      }
      for (const m of plan.messages) {
        const page = messagePageOf(m, { kind: 'review', line: 0 })
        const lines = linesOf({ ...base, page }, size)
        expect(lines.length).toBe(size.rows - 1)
        const text = lines.map((l) => (size.columns >= 100 ? l.slice(0, 70) : l))
        expect(shows(text, m.short, size.columns < 80 ? 14 : 16), `${m.short}\n${lines.join('\n')}`).toBe(true)
      }
    }
  })
})

it('a window that is too small gets one sentence', () => {
  const lines = sceneFrame(
    { kind: 'home', home: { jobs: [], hasDemo: true, line: 0, filter: '', problem: '' } },
    { columns: 52, rows: 18 },
    UNICODE,
  )
  expect(lines.map(lineText).join(' ')).toBe(
    'Make the window at least 60 wide and 20 high (now 52×18). Your answers are saved.',
  )
})

it('no word of the left column is cut, whatever the window', () => {
  const narrow = layoutOf({ columns: 60, rows: 20 }, UNICODE)
  for (const { short } of FIELDS) {
    const words = fact(narrow, short, 'x').map((line) => (line[1]?.text ?? '').trim())
    expect(words.join(' ').trim()).toBe(short)
  }
})
