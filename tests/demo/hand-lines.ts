import { all, create, type Fraction, type MathNode } from 'mathjs'

/** One line of a calculation by hand: `Lrun = down(Lslot - 2*filler) = 42 1/8 → run a width`. */
export interface HandLine {
  readonly name: string
  readonly text: string
  /** The arithmetic done again, exactly. */
  readonly worked: Fraction
  /** The figure as it was written, and how many decimals it shows; none = it must be exact. */
  readonly written: { readonly value: Fraction; readonly decimals: number } | undefined
  /** What in the plan must be the same: `run a width`. */
  readonly plan: readonly string[]
}

if (all === undefined) throw new Error('The library of arithmetic has no functions.')
const math = create(all, { number: 'Fraction' })
type Round = 'floor' | 'ceil'
const toStep = (round: Round, parts: number) => (value: Fraction) =>
  math.divide(math[round](math.multiply(value, math.fraction(parts)) as Fraction), math.fraction(parts))
math.import({
  down: toStep('floor', 16),
  up: toStep('ceil', 16),
  downhalf: toStep('floor', 32),
  tenth: toStep('ceil', 10),
  cent: (value: Fraction) => toStep('floor', 100)(math.add(value, math.fraction(1, 200))),
  near: (value: Fraction) => toStep('floor', 16)(math.add(value, math.fraction(1, 32))),
})

/** Reads every line of the page's ``` blocks and does its arithmetic again, each with the names above it. */
export function handLines(page: string): readonly HandLine[] {
  const scope: Record<string, MathNode> = {}
  const blocks = [...page.matchAll(/```\n([\s\S]*?)```/g)].map(([, block]) => block ?? '')
  return blocks
    .flatMap((block) => block.split('\n').filter((line) => line.trim() !== ''))
    .map((text) => {
      const [calculation = '', plan = ''] = text.split('→')
      const [name = '', arithmetic = '', figure] = calculation.split(' = ').map((bit) => bit.trim())
      const worked = math.evaluate(asTyped(arithmetic), scope)
      scope[name] = worked
      return { name, text, worked, written: figure === undefined ? undefined : asWritten(figure), plan: keys(plan) }
    })
}

/** `44 3/8` is one number. */
const asTyped = (text: string): string => text.replace(/(\d+) (\d+\/\d+)/g, '($1 + $2)')

export const asFraction = (text: string): Fraction => math.evaluate(asTyped(text))

const asWritten = (figure: string) => ({ value: asFraction(figure), decimals: figure.split('.')[1]?.length ?? 0 })

const keys = (plan: string): readonly string[] =>
  plan
    .split(',')
    .map((key) => key.trim())
    .filter((key) => key !== '')
