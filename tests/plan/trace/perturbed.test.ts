import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { fieldById } from '../../../src/job/fields.ts'
import { answerOf, type Job, withAnswer } from '../../../src/job/job.ts'
import { jobIn, openJson } from '../../../src/job/open.ts'
import { makePlan, type Plan } from '../../../src/plan/plan.ts'
import { reached } from '../../../src/plan/trace/missing-links.ts'
import { originOf } from '../../../src/plan/trace/origin-index.ts'
import { sizesWanted } from '../../../src/plan/trace/trace-parts.ts'
import { tracing } from '../../../src/plan/trace/tracing.ts'
import type { Part } from '../../../src/things/part.ts'
import { inches, type Length, nanometres, sum } from '../../../src/units/length.ts'

// The tree says what a size leans on. This asks the plan itself: change an answer and see what moves.

const file = 'demo/alcoves-inch/job.json'
const job = jobIn(openJson(readFileSync(file), file), file)
const on = tracing(job)

interface Size {
  readonly part: Part
  readonly name: 'length' | 'width' | 'thickness'
  /** Keys of the answers in its tree. */
  readonly answers: ReadonlySet<string>
}

/** Sizes of one part in four, with the answers in their trees. */
const sizes: readonly Size[] = on.plan.parts
  .filter((_, i) => i % 4 === 0)
  .flatMap((part) =>
    sizesWanted(part).flatMap((wanted) => {
      if (wanted.name !== 'length' && wanted.name !== 'width' && wanted.name !== 'thickness') return []
      const root = originOf(on.index, { ...wanted, by: '', before: Number.POSITIVE_INFINITY })
      if (wanted.from === undefined || root === undefined) return []
      const leaves = reached(on.index, [root]).filter(({ working }) => working.kind === 'question')
      const answers = leaves.flatMap(({ working: w }) => (w.source === 'answered' ? [`${w.about}.${w.id}`] : []))
      return [{ part, name: wanted.name, answers: new Set(answers) }]
    }),
  )

/** Answers that are one length. */
const lengthAnswers: readonly string[] = [...on.plan.used.values()].flatMap(({ key, origin }) => {
  const field = fieldById(key.slice(key.indexOf('.') + 1))
  return origin === 'answered' && field?.entry.kind === 'length' ? [key] : []
})

function changed(key: string, change: (length: Length) => Length): Plan {
  const [place = '', id = ''] = key.split('.')
  const field = fieldById(id)!
  const answer = answerOf(job, field, place) as Length
  return makePlan(withAnswer(job, field, place, change(answer)) as Job, 'quick')
}

const sizeIn = (plan: Plan, { part, name }: Size) => plan.parts.find((p) => p.id === part.id)?.[name]

describe('an answered length', () => {
  const big = [0.5, 0.8, 1.25, 2].map((f) => (l: Length) => nanometres(Math.round(l * f)))

  it('moves every size in whose tree it stands', () => {
    const still = lengthAnswers.flatMap((key) => {
      const leaning = sizes.filter((size) => size.answers.has(key))
      if (leaning.length === 0) return []
      const plans = big.map((change) => changed(key, change))
      return leaning
        .filter((size) => plans.every((plan) => sizeIn(plan, size) === size.part[size.name]))
        .map((size) => `${size.part.id} ${size.name}: ${key}`)
    })
    expect(still).toEqual([])
  })

  it('leaves every other size alone', () => {
    const moved = lengthAnswers.flatMap((key) => {
      const plan = changed(key, (l) => sum(l, inches(0, 1, 8)))
      return sizes
        .filter((size) => !size.answers.has(key) && sizeIn(plan, size) !== size.part[size.name])
        .map((size) => `${size.part.id} ${size.name}: ${key}`)
    })
    expect(moved).toEqual([])
  })

  it('is one of at least ten that are tried, on at least twenty sizes', () => {
    expect(lengthAnswers.length).toBeGreaterThanOrEqual(5)
    expect(sizes.length).toBeGreaterThanOrEqual(20)
  })
})
