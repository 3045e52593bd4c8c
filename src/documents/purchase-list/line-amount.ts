import { type Money, roundMoney } from '../../units/money.ts'
import type { OfficePurchase } from '../audience-fields.ts'

/** Packs times the price of one. */
export const lineAmount = (line: Pick<OfficePurchase, 'packs' | 'priceEach'>): Money =>
  roundMoney(line.packs * line.priceEach)
