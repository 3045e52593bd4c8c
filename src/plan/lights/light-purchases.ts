import { formula } from '../../things/formula.ts'
import type { Purchase } from '../../things/supplies.ts'
import { inMetres, type Length } from '../../units/length.ts'
import { roundMoney } from '../../units/money.ts'
import type { PlanContext } from '../context.ts'
import { priceKnown } from '../price-known.ts'
import type { LightPlan } from './lights.ts'

/** Metres of strip and of profile to buy: the strips one after another. */
const stripMetres = formula<{ strips: readonly Length[] }, number>(
  { id: 'light.strip-metres', plain: 'sum of the strips, in metres', source: 'arithmetic', gives: 'number' },
  ({ strips }) => strips.reduce((m, l) => m + inMetres(l), 0),
)

/** Cable of all lights together, metres. */
const cableMetres = formula<{ cables: readonly number[] }, number>(
  { id: 'light.cable-metres', plain: 'sum of the cables of all lights', source: 'arithmetic', gives: 'number' },
  ({ cables }) => cables.reduce((m, c) => m + c, 0),
)

/** Strip, profile, cable by the pack, and drivers; at invented prices. */
export function lightPurchases(context: PlanContext, { lights, drivers }: LightPlan): readonly Purchase[] {
  if (lights.length === 0) return []
  const strip = stripMetres({ strips: lights.map((l) => l.strip) })
  const cable = cableMetres({ cables: lights.map((l) => l.cable) })
  const sizes = [...new Set(drivers.map((d) => d.size))]
  return [
    byTheMetre(context, { id: 'light-strip', item: 'strip light, 24 V, white', need: strip }),
    byTheMetre(context, { id: 'light-profile', item: 'aluminium profile with cover, for strip light', need: strip }),
    byTheMetre(context, { id: 'light-cable', item: 'low-voltage cable, two wires', need: cable }),
    ...sizes.map((size): Purchase => {
      const own = drivers.filter((d) => d.size === size)
      const count = own.reduce((n, d) => n + d.count, 0)
      return {
        ...OF_LIGHTS,
        id: `lights.driver-${size}`,
        item: `driver for strip light, 24 V, ${own[0]?.watts ?? 0} W`,
        need: count,
        unit: 'piece',
        packSize: 1,
        packs: count,
        priceEach: roundMoney(context.figures.number(`price.light-driver-${size}`)),
        priceKnown: priceKnown(context.figures, `price.light-driver-${size}`),
      }
    }),
  ]
}

const OF_LIGHTS = {
  use: 'strip lights',
  shop: 'hardware',
  spare: '',
  firstUsedBy: 'D8',
} as const

function byTheMetre(
  { figures }: PlanContext,
  { id, item, need }: { readonly id: string; readonly item: string; readonly need: number },
): Purchase {
  const packSize = figures.number(`pack.${id}`)
  return {
    ...OF_LIGHTS,
    id: `lights.${id}`,
    item,
    need,
    unit: 'm',
    packSize,
    packs: Math.ceil(need / packSize),
    priceEach: roundMoney(figures.number(`price.${id}`) * packSize),
    priceKnown: priceKnown(figures, `price.${id}`),
  }
}
