import { formula } from '../../things/formula.ts'
import { type Money, minorUnits } from '../../units/money.ts'
import type { PlanContext } from '../context.ts'
import { split } from './shares.ts'

/** One payment. */
export interface Stage {
  readonly percent: number
  readonly says: string
  readonly amount: Money
}

const WHOLE = 100

/** The last payment's share. */
export const lastShare = formula(
  {
    id: 'price.stage-last',
    plain: '100 % − first share − middle share',
    source: 'arithmetic',
    gives: 'percent',
    from: { first: { id: 'money.stage-first' }, middle: { id: 'money.stage-middle' } },
    units: { first: 'percent', middle: 'percent' },
  },
  (of: { readonly first: number; readonly middle: number }): number => WHOLE - of.first - of.middle,
)

/** Payments: each its share of the total, the last what remains. */
export function stagesOf({ figures }: PlanContext, total: Money): readonly Stage[] {
  const first = figures.number('money.stage-first')
  const middle = figures.number('money.stage-middle')
  const last = lastShare({ first, middle })
  const [onAcceptance, onBoxes, rest] = split({ total, percents: [first, middle, last] })
  return [
    { percent: first, says: 'on acceptance, before anything is ordered', amount: onAcceptance ?? total },
    { percent: middle, says: 'when the boxes stand', amount: onBoxes ?? minorUnits(0) },
    { percent: last, says: 'at hand-over', amount: rest ?? minorUnits(0) },
  ]
}
