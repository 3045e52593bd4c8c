import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { openJob } from '../../src/job/open.ts'
import { makePlan } from '../../src/plan/plan.ts'
import type { Part } from '../../src/things/part.ts'
import { NM_PER_INCH } from '../../src/units/length.ts'
import { asFraction, handLines } from './hand-lines.ts'

const read = (file: string) => readFileSync(new URL(`../../demo/alcoves-inch/${file}`, import.meta.url))
const plan = makePlan(openJob(read('job.json'), 'demo'), 'thorough')
const lines = handLines(read('hand-calculation.md').toString('utf8'))

const pieceOf = (part: Part) => (part.piece === undefined ? part.mark : `${part.mark} ${part.piece}`)
const SIZES = ['length', 'width'] as const

/** Every size of every part under the name a line of the page gives it, in inches: `L1-B1 width`, `L-F1 rough width`, `L-T1 back`. */
function partFigures(): readonly (readonly [string, number])[] {
  return plan.parts.flatMap((part) => {
    const name = pieceOf(part)
    const [word = '', end = ''] = part.taper?.split(/ (.*)/) ?? []
    return [
      ...SIZES.map((size) => [`${name} ${size}`, part[size] / NM_PER_INCH] as const),
      ...(part.roughLength === part.length ? [] : [[`${name} rough length`, part.roughLength / NM_PER_INCH] as const]),
      ...(part.roughWidth === part.width ? [] : [[`${name} rough width`, part.roughWidth / NM_PER_INCH] as const]),
      ...(part.taper === undefined ? [] : [[`${name} ${word}`, Number(asFraction(end))] as const]),
    ]
  })
}

/** Numbers of a thing by its name; what stands for a length in it is written in inches. */
const figuresOf = (name: string, thing: object): readonly (readonly [string, number])[] =>
  Object.entries(thing).flatMap(([field, value]) =>
    typeof value !== 'number' ? [] : [[`${name} ${field}`, Math.abs(value) < 1000 ? value : value / NM_PER_INCH]],
  )

/** Litres of caulk that take one colour. */
const caulkIn = (colour: 'wall' | 'built-in'): number =>
  plan.joints.joints.filter((joint) => joint.colour === colour).reduce((litres, joint) => litres + joint.caulk, 0)

const CENTS = 100
const money = (name: string, cents: number) => [`price ${name}`, cents / CENTS] as const

const parts = partFigures()
const howMany = (name: string) =>
  plan.parts.filter((part) => pieceOf(part) === name).reduce((n, part) => n + part.quantity, 0)
const known = new Map<string, number>([
  ...parts,
  ...plan.parts.map(pieceOf).map((name) => [`count ${name}`, howMany(name)] as const),
  ...plan.slots.runs.flatMap((run) => figuresOf(`run ${run.bay.id}`, run)),
  ...plan.boxes.boxes.flatMap((box) => figuresOf(`box ${box.mark}`, box)),
  ...plan.shelves.shelves.flatMap((shelf) => figuresOf(`shelf ${shelf.mark}`, shelf)),
  ...plan.mantel.breasts.flatMap((breast) => figuresOf('mantel', breast.mantel ?? {})),
  ['plinth', plan.slots.plinth / NM_PER_INCH],
  ...plan.parts.map((part) => [`mass ${pieceOf(part)}`, plan.fixings.masses.get(part.id) ?? Number.NaN] as const),
  ...[...plan.fixings.boxMasses].map(([mark, mass]) => [`mass box ${mark}`, mass] as const),
  ...plan.panels.layouts.map((sheet) => [`mass sheet ${sheet.material.name.split(',')[0] ?? ''}`, sheet.mass] as const),
  ['area built-in', plan.coating.areas['built-in']],
  ...plan.coating.lines.map((line) => [`litres ${line.product}`, line.litres] as const),
  ...(['wall', 'built-in'] as const).map((colour) => [`caulk ${colour}`, caulkIn(colour)] as const),
  ...plan.calendar.tasks.map((task) => [`hours ${task.id}`, task.hours] as const),
  ...Object.entries(plan.price).flatMap(([name, cents]) => (typeof cents === 'number' ? [money(name, cents)] : [])),
  ...plan.price.boughtIn.map((line) => money(line.id, line.amount)),
  ...plan.price.stages.map((stage, i) => money(`stage ${i + 1}`, stage.amount)),
  ['price hours', plan.price.hours],
])

describe('the inch demo worked by hand (demo/alcoves-inch/hand-calculation.md)', () => {
  it.each(lines.filter((line) => line.written !== undefined))('is right: $text', ({ worked, written }) => {
    const slack = written === undefined || written.decimals === 0 ? 0 : 0.5000001 * 10 ** -written.decimals
    expect(Math.abs(Number(worked) - Number(written?.value))).toBeLessThanOrEqual(slack)
  })

  it.each(lines.flatMap(({ text, worked, plan: keys }) => keys.map((key) => ({ key, text, worked }))))(
    'is the plan’s $key',
    ({ key, worked }) => {
      // A length of the plan is a whole nanometre: 4e-8 in.
      expect(known.get(key), `${key} is not in the plan`).toBeCloseTo(Number(worked), 6)
    },
  )

  it('leaves no size of any part out', () => {
    const worked = new Set(lines.flatMap((line) => line.plan))
    expect(parts.map(([key]) => key).filter((key) => !worked.has(key))).toEqual([])
  })
})
