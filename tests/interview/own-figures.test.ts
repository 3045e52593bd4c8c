import { describe, expect, it } from 'vitest'
import type { OwnFigures } from '../../src/figures/own-figures.ts'
import { readAnswers } from '../../src/interview/answers.ts'
import { reviewOf } from '../../src/interview/review.ts'
import { emptyJob, withOwnFigures } from '../../src/job/job.ts'
import { day } from '../../src/units/day.ts'
import { inches } from '../../src/units/length.ts'
import { happen, sessionOf, TODAY } from './play.ts'

const folder: OwnFigures = { 'filler.nominal': { inch: '1 1/4 in', because: 'our walls' } }
const FALLBACK = { id: 'test-job', today: day('2026-11-12') }
const file = (more: object) => ({ schema: 'answers-1', answers: {}, ...more })

describe('an answers file', () => {
  it('begins a job with the person’s own figures', () => {
    expect(readAnswers(file({}), { ...FALLBACK, figures: folder }).job.figures).toEqual(folder)
    expect(readAnswers(file({}), FALLBACK).job.figures).toBeUndefined()
  })

  it('may carry figures of its own, which go before those of the folder', () => {
    const figures = { 'filler.nominal': { inch: '1 1/2 in', because: 'this wall' } }
    const { job, faults } = readAnswers(file({ figures }), { ...FALLBACK, figures: folder })
    expect(faults).toEqual([])
    expect(job.figures).toEqual(figures)
  })

  it('is told what is wrong with a figure', () => {
    const figures = { 'lead.year': { value: 1960, because: 'quicker' } }
    expect(readAnswers(file({ figures }), FALLBACK).faults[0]).toMatch(/^figures lead\.year: .*1960 year is less than/)
  })
})

describe('check answers', () => {
  const job = emptyJob('test-job', TODAY)
  const review = (carried: OwnFigures | undefined, now: OwnFigures | undefined) => {
    const begun = carried === undefined ? job : withOwnFigures(job, carried)
    return { ...sessionOf(begun, 'review'), ownFigures: now }
  }
  const lineIn = (session: ReturnType<typeof review>) =>
    reviewOf(session.job, session.plan, session.ownFigures).findIndex((line) => line.kind === 'figures')

  it('says nothing of figures that are those the job was begun with, or were never looked up', () => {
    expect(lineIn(review(folder, folder))).toBe(-1)
    expect(lineIn(review(folder, undefined))).toBe(-1)
    expect(lineIn(review(undefined, {}))).toBe(-1)
  })

  it('names those that changed since; Enter takes them, plans again and keeps the job', () => {
    const session = review(undefined, folder)
    const line = lineIn(session)
    const says = reviewOf(session.job, session.plan, session.ownFigures)[line]?.says
    expect(says).toContain('1 of your own figures changed since this job was begun (filler.nominal)')
    const disk: Parameters<typeof happen>[2] = []
    const after = happen({ ...session, page: { kind: 'review', line } }, { kind: 'enter' }, disk)
    expect(after.job.figures).toEqual(folder)
    expect(after.plan.figures.units === 'inch' ? after.plan.figures.length('filler.nominal') : 0).toBe(inches(1, 1, 4))
    expect(disk.at(-1)?.job.figures).toEqual(folder)
    expect(lineIn({ ...session, ...after })).toBe(-1)
  })

  it('lets go of figures that are no longer in the folder', () => {
    const session = review(folder, {})
    const after = happen({ ...session, page: { kind: 'review', line: lineIn(session) } }, { kind: 'enter' })
    expect(after.job.figures).toBeUndefined()
  })
})
