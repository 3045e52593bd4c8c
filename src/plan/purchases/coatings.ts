import type { Purchase } from '../../things/supplies.ts'
import { roundMoney } from '../../units/money.ts'
import { LITRES_PER_US_GALLON } from '../../units/volume.ts'
import type { Built } from '../built.ts'
import type { CoatingLine } from '../coating/coating.ts'
import type { PlanContext } from '../context.ts'
import { cheapestPacks } from './cheapest-packs.ts'

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
  const litres = lines.reduce((sum, l) => sum + l.litres, 0)
  const sizes = (inch ? system.packsInch : system.packsMetric)
    .map((size) => ({ size, price: priceOf(context, line, size) }))
    .toSorted((a, b) => b.size - a.size)
  const counts = cheapestPacks(litres, sizes)
  const unit = inch ? { says: 'gal', litres: LITRES_PER_US_GALLON } : { says: 'l', litres: 1 }
  return sizes.flatMap(({ size, price }, i): readonly Purchase[] => {
    const packs = counts[i] ?? 0
    const larger = sizes.slice(0, i).reduce((sum, s, k) => sum + s.size * (counts[k] ?? 0), 0)
    if (packs === 0) return []
    return [
      {
        id: `${line.surface}.${line.layer}.${i + 1}`,
        item: `${line.product}${colourOf(built, line)}`,
        use: lines.map((l) => `${l.surface}, ${l.layer}, ${l.coats} ${l.coats === 1 ? 'coat' : 'coats'}`).join('; '),
        shop: 'coatings',
        need: Math.max(0, Math.min(litres - larger, packs * size)) / unit.litres,
        unit: unit.says,
        packSize: roundedSize(size / unit.litres),
        packs,
        spare: '',
        priceEach: price,
        priceKnown: 'invented',
        firstUsedBy: FIRST_USED[line.surface],
      },
    ]
  })
}

const FIRST_USED = { 'built-in': 'W7.1', masonry: 'B6.1', wall: 'B7' } as const
const DECIMALS = 1e4
/** 0.946352946 l is a quarter gallon on the tin. */
const roundedSize = (size: number): number => Math.round(size * DECIMALS) / DECIMALS

const colourOf = (built: Built, line: CoatingLine): string => {
  const colour = built.coating.colours[line.surface]
  return line.layer === 'top' && colour !== '' ? `, ${colour}` : ''
}

/** A litre costs more in a small tin. */
function priceOf({ figures }: PlanContext, line: CoatingLine, size: number) {
  const kind = line.layer !== 'top' || line.surface === 'built-in' ? line.layer : line.surface
  const small = size < SMALL_TIN ? figures.number('price.small-tin') : 1
  return roundMoney(figures.number(`price.litre-${kind}`) * size * small)
}
/** Litres. */
const SMALL_TIN = 2
