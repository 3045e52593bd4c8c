import { boxQuote, frontQuote, sprayQuote } from '../../job/chapters/make-or-buy.ts'
import { formula } from '../../things/formula.ts'
import { SQUARE_METRES_PER_SQUARE_FOOT } from '../../units/area.ts'
import { type Hours, hours } from '../../units/hours.ts'
import { type Money, roundMoney } from '../../units/money.ts'
import type { PlanContext } from '../context.ts'

/** Own hours for bought-in work: a fixed part to order and fetch, and some for each piece to check. */
export const ownHoursToBuy = formula(
  {
    id: 'supply.own-hours',
    plain: 'hours to order, fetch and check + pieces × hours a piece',
    source: 'common practice, no source',
    gives: 'hours',
    from: { once: { id: 'buy.hours-once' }, each: { id: 'buy.hours-piece' } },
    units: { once: 'hours', each: 'hours', pieces: 'count' },
  },
  (of: { readonly once: number; readonly each: number; readonly pieces: number }): Hours =>
    hours(of.once + of.each * of.pieces),
)

/** Area in what the quote counts. */
export const areaInSquareFeet = formula(
  {
    id: 'supply.area',
    plain: 'area in m² / 0.09290304',
    source: '1 ft = 30.48 cm, 16 CFR 500.19',
    gives: 'number',
    units: { squareMetres: 'area' },
  },
  (of: { readonly squareMetres: number }): number => of.squareMetres / SQUARE_METRES_PER_SQUARE_FOOT,
)

/** Square feet in an inch job, square metres in a metric one. */
export const areaCounted = ({ figures }: Pick<PlanContext, 'figures'>, squareMetres: number): number =>
  figures.units === 'inch' ? areaInSquareFeet({ squareMetres }) : squareMetres

/** What a shop asks for so many pieces. */
export const quotedByPiece = formula(
  {
    id: 'supply.quoted',
    plain: 'pieces × quote for one',
    source: 'arithmetic',
    gives: 'money',
    from: { each: [boxQuote, frontQuote] },
    units: { pieces: 'count', each: 'money' },
  },
  (of: { readonly pieces: number; readonly each: Money }): Money => roundMoney(of.pieces * of.each),
)

/** What a shop asks for so much painted area. */
export const quotedByArea = formula(
  {
    id: 'supply.quoted',
    plain: 'painted area × quote for one square foot or square metre',
    source: 'arithmetic',
    gives: 'money',
    from: { area: areaInSquareFeet, each: sprayQuote },
    units: { area: 'number', each: 'money' },
  },
  (of: { readonly area: number; readonly each: Money }): Money => roundMoney(of.area * of.each),
)
