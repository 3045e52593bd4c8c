import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { fieldById } from '../../../src/job/fields.ts'
import { answerOf, type Job, withAnswer } from '../../../src/job/job.ts'
import { jobIn, openJson } from '../../../src/job/open.ts'
import { makePlan, type Plan } from '../../../src/plan/plan.ts'
import { originsOf } from '../../../src/plan/trace/missing-links.ts'
import { type Noted, originOf } from '../../../src/plan/trace/origin-index.ts'
import { sizesWanted } from '../../../src/plan/trace/trace-parts.ts'
import { tracing } from '../../../src/plan/trace/tracing.ts'
import type { Part } from '../../../src/things/part.ts'
import { inches, type Length, nanometres, sum } from '../../../src/units/length.ts'

// The tree says what a size leans on. This asks the plan itself: change an answer and see what moves.

const file = 'demo/alcoves-inch/job.json'
const demo = jobIn(openJson(readFileSync(file), file), file)
/** The demo with every length it only suggests answered as suggested: the same plan, more answers to change. */
const job = [...makePlan(demo, 'quick').used.values()].reduce<Job>((now, { key, value }) => {
  const [place = '', id = ''] = key.split('.')
  const field = fieldById(id)
  return field?.entry.kind === 'length' && typeof value === 'number' ? withAnswer(now, field, place, value) : now
}, demo)
const on = tracing(job)

interface Size {
  readonly part: Part
  readonly name: 'length' | 'width' | 'thickness'
  /** Keys of the answers in its tree. */
  readonly answers: ReadonlySet<string>
  /** Those that do not only say at which height or depth the wall was read: a wall may be straight there. */
  readonly moving: ReadonlySet<string>
}

/** Sizes of one part in five, with the answers in their trees. */
const sizes: readonly Size[] = on.plan.parts
  .filter((_, i) => i % 5 === 0)
  .flatMap((part) =>
    sizesWanted(part).flatMap((wanted) => {
      if (wanted.name !== 'length' && wanted.name !== 'width' && wanted.name !== 'thickness') return []
      const root = originOf(on.index, { ...wanted, by: '', before: Number.POSITIVE_INFINITY })
      if (wanted.from === undefined || root === undefined) return []
      return [{ part, name: wanted.name, answers: answersUnder(root), moving: answersUnder(root, isReading) }]
    }),
  )

function answersUnder(root: Noted, stopAt: (one: Noted) => boolean = () => false): ReadonlySet<string> {
  const below = new Set<string>()
  const seen = new Set<number>()
  const open = [root]
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    if (seen.has(one.at) || stopAt(one)) continue
    seen.add(one.at)
    const { working: w } = one
    if (w.kind === 'question' && w.source === 'answered') below.add(`${w.about}.${w.id}`)
    open.push(...originsOf(on.index, one))
  }
  return below
}

function isReading({ working }: Noted): boolean {
  return working.id.startsWith('recess.')
}

/** Answers that are one length; nothing leans on a 0. */
const lengthAnswers: readonly string[] = [...on.plan.used.values()].flatMap(({ key, origin, value }) => {
  const field = fieldById(key.slice(key.indexOf('.') + 1))
  return origin === 'answered' && value !== 0 && field?.entry.kind === 'length' ? [key] : []
})

function changed(key: string, change: (length: Length) => Length): Plan {
  const [place = '', id = ''] = key.split('.')
  const field = fieldById(id)!
  const answer = answerOf(job, field, place) as Length
  return makePlan(withAnswer(job, field, place, change(answer)), 'quick')
}

const sizeIn = (plan: Plan, { part, name }: Size) => plan.parts.find((p) => p.id === part.id)?.[name]

describe('an answered length', () => {
  const big = [0.5, 0.8, 1.25, 2].map((f) => (l: Length) => nanometres(Math.round(l * f)))

  it('moves every size in whose tree it stands', () => {
    const still = lengthAnswers.flatMap((key) => {
      const leaning = sizes.filter((size) => size.moving.has(key))
      if (leaning.length === 0) return []
      const unmoved = big.reduce<readonly Size[]>((left, change) => {
        if (left.length === 0) return left
        const plan = changed(key, change)
        return left.filter((size) => sizeIn(plan, size) === size.part[size.name])
      }, leaning)
      return unmoved.map((size) => `${size.part.id} ${size.name}: ${key}`)
    })
    expect(still).toEqual([])
  }, 60_000)

  it('leaves every other size alone', () => {
    const moved = lengthAnswers.flatMap((key) => {
      const plan = changed(key, (l) => sum(l, inches(0, 1, 8)))
      return sizes
        .filter((size) => !size.answers.has(key) && sizeIn(plan, size) !== size.part[size.name])
        .map((size) => `${size.part.id} ${size.name}: ${key}`)
    })
    expect(moved).toEqual([])
  })

  it('is one of at least five that are tried, on at least twenty sizes', () => {
    expect(lengthAnswers.length).toBeGreaterThanOrEqual(5)
    expect(sizes.length).toBeGreaterThanOrEqual(20)
  })
})
