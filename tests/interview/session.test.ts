import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readAnswers } from '../../src/interview/answers.ts'
import type { Kept, Session } from '../../src/interview/session.ts'
import { step } from '../../src/interview/step.ts'
import { inches, millimetres } from '../../src/units/length.ts'
import { happen, newSession, sessionOf, TODAY, typed } from './play.ts'

const at = (session: Session) => (session.page.kind === 'question' ? session.page.key : session.page.kind)
const demo = (name: string) =>
  readAnswers(JSON.parse(readFileSync(`demo/${name}/answers.json`, 'utf8')), { id: 'test-job', today: TODAY }).job

/** Enter until a question is reached. */
const on = (session: Session, key: string, disk: Kept[] = []): Session => {
  let now = session
  for (let i = 0; i < 300 && at(now) !== key; i++) now = happen(now, { kind: 'enter' }, disk)
  return now
}

describe('answering', () => {
  it('shows the next question only once the answer is on disk, with the place it goes on at', () => {
    const begun = newSession()
    const withText = happen(begun, { kind: 'edit', edit: { kind: 'insert', text: 'Larkspur' } })
    const entered = step(withText, { kind: 'enter' })
    expect(entered.effects.map((e) => e.kind)).toEqual(['plan'])
    expect(at(entered.session)).toBe('job.title')
    const planned = step(entered.session, { kind: 'planned', plan: begun.plan })
    expect(planned.effects).toMatchObject([{ kind: 'save', kept: { at: 'job.units' } }])
    expect(at(planned.session)).toBe('job.title')
    const saved = step(planned.session, { kind: 'saved' })
    expect(at(saved.session)).toBe('job.units')
    expect(saved.session.job.facts.job).toEqual({ title: 'Larkspur' })
  })
  it('goes on typing when the disk refuses, and says so', () => {
    const entered = step(happen(newSession(), { kind: 'edit', edit: { kind: 'insert', text: 'X' } }), { kind: 'enter' })
    const planned = step(entered.session, { kind: 'planned', plan: entered.session.plan })
    const { session } = step(planned.session, { kind: 'not-saved', says: 'The disk is full.' })
    expect(session).toMatchObject({
      saved: 'not saved yet',
      problem: 'The disk is full.',
      job: { facts: { job: { title: 'X' } } },
    })
  })
  it('keeps what was typed when it is refused, and when one goes back and comes again', () => {
    const bad = typed(on(newSession(), 'job.startDay'), '31 feb')
    expect(bad.said).toEqual({ kind: 'error', says: 'February 2026 has 28 days.' })
    const again = happen(happen(bad, { kind: 'back' }), { kind: 'enter' })
    expect(at(again)).toBe('job.startDay')
    expect(again.drafts['job.startDay']?.line.text).toBe('31 feb')
  })
  it('leaves a suggestion to the plan, and keeps "not measured" as an answer', () => {
    const wall = typed(on(newSession(), 'job.bays'), 'alcove')
    const next = happen(wall, { kind: 'enter' })
    expect(next.job.facts.job?.units).toBeUndefined()
    expect(next.job.facts.a?.widths).toBe('not measured')
  })
  it('does not go past the wall without an answer', () => {
    const wall = on(newSession(), 'job.bays')
    const stuck = happen(wall, { kind: 'enter' })
    expect(at(stuck)).toBe('job.bays')
    expect(stuck.said).toMatchObject({ kind: 'error' })
  })
  it('takes a likely slip on a second Enter', () => {
    const before = on(typed(on(newSession(), 'job.bays'), 'flat'), 'a.flatLength')
    const held = typed(before, '3048')
    expect(held.said).toMatchObject({
      kind: 'held',
      says: '3048 in is 254 ft. Did you mean 3048 mm (120 in)? Enter = yes.',
    })
    expect(happen(held, { kind: 'enter' }).job.facts.a?.flatLength).toBe(inches(120))
  })
})

describe('a table', () => {
  const widths = () => typed(on(newSession(), 'job.bays'), 'alcove')
  it('takes row by row, each on disk at once, and ends on an empty row', () => {
    const disk: Kept[] = []
    const two = typed(typed(widths(), '4 41 1/4 41 3/8 0', disk), '36 41 - -', disk)
    expect(at(two)).toBe('a.widths')
    expect(disk.at(-1)?.job.facts.a?.widths).toHaveLength(2)
    const done = happen(two, { kind: 'enter' }, disk)
    expect(at(done)).toBe('a.squareLeft')
  })
  it('changes a row reached with the arrows', () => {
    const two = typed(typed(widths(), '4 41 1/4 41 3/8 0'), '36 41')
    const up = happen(happen(two, { kind: 'move', by: -2 }), { kind: 'edit', edit: { kind: 'clear' } })
    expect(typed(up, '4 42').job.facts.a?.widths).toEqual([
      { height: inches(4), back: inches(42) },
      { height: inches(36), back: inches(41) },
    ])
  })
  it('drops a row that was wiped', () => {
    const two = typed(typed(widths(), '4 41 1/4'), '36 41')
    const wiped = happen(happen(two, { kind: 'move', by: -2 }), { kind: 'edit', edit: { kind: 'clear' } })
    expect(happen(wiped, { kind: 'enter' }).job.facts.a?.widths).toEqual([{ height: inches(36), back: inches(41) }])
  })
  it('adds pasted rows to those that stand', () => {
    const pasted = typed(typed(widths(), '4 41 1/4 41 3/8'), '36 41 41 1/8\n84 40 7/8 40 15/16')
    expect(pasted.job.facts.a?.widths).toHaveLength(3)
  })
  it('keeps a length no inch mark can show when another row is added later', () => {
    const one = typed(widths(), '4 1048mm')
    const back = happen(happen(one, { kind: 'enter' }), { kind: 'back' })
    expect(typed(back, '36 41').job.facts.a?.widths).toEqual([
      { height: inches(4), back: millimetres(1048) },
      { height: inches(36), back: inches(41) },
    ])
  })
  it('takes a pasted column of rows', () => {
    const pasted = typed(widths(), '4 41 1/4 41 3/8\n36 41 41 1/8\n84 40 7/8 40 15/16\n')
    expect(pasted.job.facts.a?.widths).toHaveLength(3)
  })
})

describe('the review', () => {
  it('leads to a question and back to the same line', () => {
    const review = happen(sessionOf(demo('niche-metric'), 'review'), { kind: 'move', by: 3 })
    const there = happen(review, { kind: 'enter' })
    if (there.page.kind !== 'question') return expect(there.page.kind).toBe('message')
    expect(happen(there, { kind: 'enter' }).page).toEqual({ kind: 'review', line: 3 })
  })
})

describe('whatever the job', () => {
  it.each(['alcoves-inch', 'niche-metric'])(
    '%s: Esc to the start and Enter to the end give the identical job',
    (name) => {
      const job = demo(name)
      let session = sessionOf(job, 'review')
      let back = 0
      while (at(session) !== 'job.title') {
        session = happen(session, { kind: 'back' })
        back += 1
        if (back > 500) throw new Error('Esc does not reach the start')
      }
      for (let i = 0; i < back; i++) session = happen(session, { kind: 'enter' })
      // A measurement nobody took is "not measured" once one has passed it; everything else is as it was.
      const answered = (s: Session) => JSON.stringify(s.job, (_, v: unknown) => (v === 'not measured' ? undefined : v))
      expect(answered(session)).toBe(answered(sessionOf(job)))
      const again = on({ ...session }, 'review')
      expect(again.job).toEqual(on(sessionOf(session.job), 'review').job)
    },
  )

  const events = fc.oneof(
    fc.constantFrom<Parameters<typeof happen>[1]>(
      { kind: 'enter' },
      { kind: 'enter' },
      { kind: 'back' },
      { kind: 'help' },
      { kind: 'review' },
      { kind: 'move', by: 1 },
      { kind: 'move', by: -1 },
      { kind: 'edit', edit: { kind: 'backspace' } },
      { kind: 'edit', edit: { kind: 'clear' } },
    ),
    fc
      .constantFrom(
        '1',
        '2',
        'yes',
        'nm',
        '41 1/4',
        '14 15',
        '4 41 41',
        'alcove breast',
        'flat',
        '2026-12-10',
        'suggested',
        'x',
      )
      .map((text) => ({ kind: 'edit', edit: { kind: 'insert', text } }) as const),
  )
  it('a random walk never crashes, and the last save holds every accepted answer', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('alcoves-inch', 'niche-metric'),
        fc.array(events, { maxLength: 30 }),
        (name, walk) => {
          const disk: Kept[] = []
          const end = walk.reduce((s, e) => happen(s, e, disk), sessionOf(demo(name), 'a.widths'))
          return disk.length === 0 || JSON.stringify(disk.at(-1)?.job) === JSON.stringify(end.job)
        },
      ),
      { numRuns: 25 },
    )
  }, 60_000)
})
