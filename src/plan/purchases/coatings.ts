import { formula, within } from '../../things/formula.ts'
import type { Purchase } from '../../things/supplies.ts'
import type { Money } from '../../units/money.ts'
import { LITRES_PER_US_GALLON } from '../../units/volume.ts'
import type { Built } from '../built.ts'
import { coverageLitres, filmLitres } from '../coating/coat-litres.ts'
import type { CoatingLine } from '../coating/coating.ts'
import type { PlanContext } from '../context.ts'
import { priceKnown } from '../price-known.ts'
import { cheapestPacks, type PackSize } from './cheapest-packs.ts'
import { packPrice } from './packs.ts'

/** Each product once, its litres summed over coats and surfaces, in the cheapest containers that cover them. */
export function coatingPurchases(context: PlanContext, built: Built): readonly Purchase[] {
  const lines = built.coating.lines.filter((l) => l.litres > 0)
  const products = [...new Set(lines.map((l) => l.product))]
  return products.flatMap((product) =>
    containersOf(
      context,
      built,
      lines.filter((l) => l.product === product),
    ),
  )
}

function containersOf(context: PlanContext, built: Built, lines: readonly CoatingLine[]): readonly Purchase[] {
  const [line] = lines
  const system = line === undefined ? undefined : built.coating.systems[line.surface]
  if (line === undefined || system === undefined) return []
  const inch = context.show.units === 'inch'
  const idOf = (at: number) => `${line.surface}.${line.layer}.${at + 1}`
  const jars = built.coating.chipKit.filter((jar) => jar.from === 'tin' && jar.product === line.product)
  const litres = within(`${line.surface}.${line.layer}`, () =>
    litresTogether({ litres: [...lines, ...jars].map((l) => l.litres) }),
  )
  const sizes = (inch ? system.packsInch : system.packsMetric)
    .toSorted((a, b) => b - a)
    .map((size, at) => ({ size, price: within(idOf(at), () => priceOf(context, line, size)) }))
  const counts = cheapestTins({ litres, sizes })
  const unit = inch ? { says: 'gal', litres: LITRES_PER_US_GALLON } : { says: 'l', litres: 1 }
  return sizes.flatMap(({ size, price }, at): readonly Purchase[] => {
    const packs = counts[at] ?? 0
    const inLarger = sizes.slice(0, at).reduce((sum, s, k) => sum + s.size * (counts[k] ?? 0), 0)
    if (packs === 0) return []
    return [
      {
        id: idOf(at),
        item: `${line.product}${colourOf(built, line)}`,
        use: [...lines.map(coatWords), ...jars.map(() => 'chip kit')].join('; '),
        shop: 'coatings',
        need: within(idOf(at), () => litresInTins({ litres, inLarger, inThese: packs * size })) / unit.litres,
        unit: unit.says,
        packSize: roundedSize(size / unit.litres),
        packs,
        spare: '',
        priceEach: price,
        priceKnown: priceKnown(context.figures, priceRow(line)),
        firstUsedBy: FIRST_USED[line.surface],
      },
    ]
  })
}

/** Litres of one product: coats and surfaces together. */
export const litresTogether = formula(
  {
    id: 'purchase.litres',
    plain: 'litres of every surface and coat painted with this product, and of its jar in the chip kit',
    source: 'arithmetic',
    gives: 'litres',
    from: { litres: [filmLitres, coverageLitres, { id: 'chip-kit.jar' }] },
  },
  (of: { readonly litres: readonly number[] }): number => of.litres.reduce((sum, l) => sum + l, 0),
)

/** How many tins of each size, largest first. */
export const cheapestTins = formula(
  {
    id: 'tins.packs',
    plain: 'cheapest set of tins that holds the litres; of equally cheap ones the one with least left over',
    source: 'arithmetic',
    gives: 'count',
    from: { litres: litresTogether },
  },
  (of: { readonly litres: number; readonly sizes: readonly PackSize[] }): readonly number[] =>
    cheapestPacks(of.litres, of.sizes),
)

/** The share of the need that these tins hold, litres. */
export const litresInTins = formula(
  {
    id: 'purchase.litres-in-tins',
    plain: 'litres − those in larger tins, no more than these tins hold',
    source: 'arithmetic',
    gives: 'litres',
    from: { litres: litresTogether },
    units: { inLarger: 'litres', inThese: 'litres' },
  },
  (of: { readonly litres: number; readonly inLarger: number; readonly inThese: number }): number =>
    Math.max(0, Math.min(of.litres - of.inLarger, of.inThese)),
)

const coatWords = ({ surface, layer, coats }: CoatingLine): string =>
  `${surface}, ${layer}, ${coats} ${coats === 1 ? 'coat' : 'coats'}`

const FIRST_USED = { 'built-in': 'W7.1', masonry: 'B6.1', wall: 'B7' } as const
const DECIMALS = 1e4
/** 0.946352946 l is a quarter gallon on the tin. */
const roundedSize = (size: number): number => Math.round(size * DECIMALS) / DECIMALS

const colourOf = (built: Built, line: CoatingLine): string => {
  const colour = built.coating.colours[line.surface]
  return line.layer === 'top' && colour !== '' ? `, ${colour}` : ''
}

const priceRow = ({ layer, surface }: CoatingLine): string =>
  `price.litre-${layer !== 'top' || surface === 'built-in' ? layer : surface}`

/** A litre costs more in a small tin. */
function priceOf({ figures }: PlanContext, line: CoatingLine, holds: number): Money {
  const row = priceRow(line).slice('price.'.length)
  const small = holds < SMALL_TIN ? { 'small-tin': figures.number('price.small-tin') } : {}
  return packPrice({ [row]: figures.number(`price.${row}`), ...small, holds })
}
/** Litres. */
const SMALL_TIN = 2
