import { describe, expect, it } from 'vitest'
import { extraParts } from '../../../src/job/chapters/extras.ts'
import { withAnswer } from '../../../src/job/job.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import { missingLinks } from '../../../src/plan/trace/missing-links.ts'
import { tracing } from '../../../src/plan/trace/tracing.ts'
import { PROVOKED } from '../provoked.ts'
import { in_ } from '../run-for-test.ts'

const withPiece = PROVOKED.extrasAsGiven
if (withPiece === undefined) throw new Error('No job with a piece of its own.')
const without = withAnswer(withPiece, extraParts, 'a', [])

const plan = makePlan(withPiece, 'quick')
const plain = makePlan(without, 'quick')
const piece = plan.parts.find((part) => part.mark === 'L-Z1')

describe('a piece added by hand', () => {
  it('is cut as it was given, under a mark of its own', () => {
    expect(piece).toMatchObject({ name: 'cornice', quantity: 1, length: in_(40), width: in_(3), thickness: in_(0.75) })
    expect(plan.panels.layouts.flatMap((l) => l.laid).map((laid) => laid.part.mark)).toContain('L-Z1')
    expect(plain.parts.some((part) => part.mark.includes('-Z'))).toBe(false)
  })

  it('is coated on both faces and all edges, MDF edges twice (worked by hand)', () => {
    // 2 × 40 × 3 + 2 × (40 + 3) × 0.75 × 2 = 369 square inches of 0.0254² m²
    const more = plan.coating.areas['built-in'] - plain.coating.areas['built-in']
    expect(more).toBeCloseTo(369 * 0.0254 ** 2, 9)
  })

  it('is fitted in a step of its own, as the person’s own, before holes are filled', () => {
    const step = plan.calendar.tasks.find((task) => task.id === 'F11')
    expect(step?.marks).toEqual(['L-Z1'])
    expect(step?.setOut.join()).toMatch(/cornice.*yours/)
    expect(plan.calendar.tasks.find((task) => task.id === 'D1')?.after).toContain('F11')
    expect(plain.calendar.tasks.some((task) => task.id === 'F11')).toBe(false)
  })

  it('costs more than without it, and weighs what its size weighs', () => {
    expect(plan.price.total).toBeGreaterThan(plain.price.total)
    const density = plan.figures.number('density.mdf')
    const mass = plan.fixings.masses.get('a/extra-1') ?? 0
    expect(mass).toBeCloseTo(40 * 3 * 0.75 * 0.0254 ** 3 * density, 9)
  })

  it('says where each size comes from', () => {
    expect(missingLinks(tracing(withPiece))).toEqual([])
  })
})
