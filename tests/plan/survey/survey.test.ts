import { describe, expect, it } from 'vitest'
import { edgeAt } from '../../../src/geometry/edge.ts'
import {
  bays,
  floor,
  returns,
  squareLeft,
  squareRight,
  studs,
  wallKind,
  widths,
} from '../../../src/job/chapters/wall.ts'
import { withAnswer } from '../../../src/job/job.ts'
import type { AlcoveWall } from '../../../src/plan/survey/survey.ts'
import { survey } from '../../../src/plan/survey/survey.ts'
import { millimetres as mm, ZERO } from '../../../src/units/length.ts'
import { contextOfJob, inMm, wallOf } from '../run-for-test.ts'

const alcove = wallOf('metric', ['alcove'])
const surveyOf = (job: typeof alcove.job) => survey(contextOfJob(job))
const codes = (job: typeof alcove.job) => surveyOf(job).messages.map((m) => m.code)
const row = (height: number, back: number, front: number, left?: number, right?: number) => ({
  height: mm(height),
  back: mm(back),
  front: mm(front),
  ...(left === undefined ? {} : { left: mm(left) }),
  ...(right === undefined ? {} : { right: mm(right) }),
})

describe('the wall as measured', () => {
  it('stands at stated assumptions and waits for all of them when nothing is measured', () => {
    const wall = surveyOf(alcove.job).walls[0] as AlcoveWall
    expect(wall.width).toBe(mm(1000))
    expect(Object.values(wall.waits).flat()).toEqual([
      'a.widths',
      'a.returns',
      'a.ceiling',
      'a.floor',
      'a.baseboard',
      'a.wallKind',
      'a.studs',
      'a.devices',
    ])
    expect(codes(alcove.job)).toEqual([])
  })

  it('puts bays one after the other along the wall', () => {
    const three = wallOf('metric', ['alcove', 'breast', 'alcove']).put(widths, 'a', [row(0, 1200, 1200)])
    expect(surveyOf(three.job).walls.map((w) => inMm(w.originX))).toEqual([0, 1200, 2700])
  })

  it('follows the left lean; only a right lean gives the left one from the widths', () => {
    const right = alcove.put(widths, 'a', [row(0, 1200, 1200), row(1000, 1190, 1190, undefined, 4)])
    const wall = surveyOf(right.job).walls[0] as AlcoveWall
    expect(inMm(edgeAt(wall.left.back, mm(1000)))).toBe(6)
    expect(inMm(edgeAt(wall.right.back, mm(1000)))).toBe(1196)
  })

  it('splits what was not measured evenly, and says so', () => {
    const job = alcove.put(widths, 'a', [row(0, 1200, 1208), row(1000, 1190, 1198)]).job
    const wall = surveyOf(job).walls[0] as AlcoveWall
    expect(inMm(edgeAt(wall.left.back, mm(1000)))).toBe(5)
    expect(inMm(edgeAt(wall.left.front, ZERO))).toBe(-4)
    expect(codes(job)).toEqual(['N3', 'N4'])
  })

  it('lets one face stand for both when the other was not measured', () => {
    const job = alcove.put(widths, 'a', [{ height: ZERO, back: mm(1200) }]).job
    const wall = surveyOf(job).walls[0] as AlcoveWall
    expect(wall.right.front).toEqual(wall.right.back)
    expect(codes(job)).toEqual(['N2'])
  })

  it.each([
    ['within the tolerance', 7, []],
    ['beyond it', 6, ['C1']],
  ])('two leans that disagree %s', (_words, rightLean, expected) => {
    const job = alcove.put(widths, 'a', [row(0, 1200, 1200, 0, 0), row(1000, 1188, 1188, 2, rightLean)]).job
    expect(codes(job)).toEqual(expected)
  })

  it('asks again about two squares that do not make the taper', () => {
    const job = alcove
      .put(widths, 'a', [row(0, 1200, 1190, 0, 0)])
      .put(squareLeft, 'a', mm(10))
      .put(squareRight, 'a', mm(4)).job
    expect(codes(job)).toEqual(['C1'])
  })

  it.each([
    ['widths far apart', alcove.put(widths, 'a', [row(0, 1200, 1200, 0), row(900, 1050, 1050, 20)]).job, 'C1'],
    ['a lean of 60 mm', alcove.put(widths, 'a', [row(0, 1200, 1200, 0), row(900, 1200, 1200, 60)]).job, 'C1'],
    [
      'a shallow return',
      alcove.put(widths, 'a', [row(0, 1200, 1200, 0)]).put(returns, 'a', [mm(100), mm(400)]).job,
      'C1',
    ],
    ['a width of 0', alcove.put(widths, 'a', [row(0, 1200, 1200, 0), row(900, 0, 1200)]).job, 'S20'],
    ['a height twice', alcove.put(widths, 'a', [row(0, 1200, 1200, 0), row(0, 1201, 1201)]).job, 'S20'],
    ['a floor above the highest point', alcove.put(floor, 'a', [{ x: ZERO, drop: mm(-3) }]).job, 'S20'],
    ['no highest point of the floor', alcove.put(floor, 'a', [{ x: ZERO, drop: mm(3) }]).job, 'S20'],
  ])('%s', (_words, job, code) => {
    expect(codes(job)).toContain(code)
  })

  it.each([
    ['a stud', alcove.put(studs, 'a', [mm(400), mm(1300)]).job],
    ['a floor point', alcove.put(floor, 'a', [{ x: mm(1400), drop: ZERO }]).job],
  ])('asks about %s beyond the right end, and keeps still where the width is not measured', (_words, job) => {
    const wide = withAnswer(withAnswer(job, wallKind, 'a', 'studs'), widths, 'a', [row(0, 1200, 1200, 0)])
    expect(codes(wide)).toContain('C1')
    expect(codes(withAnswer(wide, widths, 'a', [row(0, 1400, 1400, 0)]))).not.toContain('C1')
    expect(codes(job)).not.toContain('C1')
  })

  it('takes a return of 0 for a room wall that goes on', () => {
    const wall = surveyOf(alcove.put(returns, 'a', [ZERO, mm(400)]).job).walls[0] as AlcoveWall
    expect([wall.returnLeft, wall.returnRight, wall.depth]).toEqual([undefined, mm(400), mm(400)])
  })

  it('has no wall while nobody has said what stands along it', () => {
    expect(surveyOf(withAnswer(alcove.job, bays, 'job', undefined))).toEqual({ walls: [], messages: [] })
  })
})
