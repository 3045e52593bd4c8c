import { sheetPrice } from '../../job/chapters/price.ts'
import { within } from '../../things/formula.ts'
import type { Sheet } from '../../things/material.ts'
import type { Purchase } from '../../things/supplies.ts'
import { millimetres } from '../../units/length.ts'
import type { Money } from '../../units/money.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'
import { isPrefinishedSheet, materialOf } from '../materials.ts'
import { priceKnown } from '../price-known.ts'
import { packPrice, packsFor } from './packs.ts'

/** Panels up to this are priced as thin ones. */
const THIN = millimetres(10)

/** Sheets by material, spare included, and sticks. */
export function panelPurchases(context: PlanContext, built: Built): readonly Purchase[] {
  const sheets = [...built.panels.order].flatMap(([id, order]) => {
    const material = materialOf(id, context.figures)
    return material.kind === 'sheet' ? [within(id, () => sheetPurchase(context, built, material, order))] : []
  })
  const sticks = built.panels.sticks.map(
    ({ material, bars }): Purchase =>
      within(material.id, () => ({
        id: material.id,
        item: `${material.name}, ripped from the next size sold, ${context.show.withUnit(material.stockLength)} lengths`,
        use: 'plinths, cleats, battens, ledgers',
        shop: 'lumber',
        need: bars.length,
        unit: 'length',
        packSize: 1,
        packs: packsFor({ need: bars.length, packSize: 1, unit: 'length' }),
        spare: '',
        priceEach: packPrice({ stick: context.figures.number('price.stick') }),
        priceKnown: priceKnown(context.figures, 'price.stick'),
        firstUsedBy: 'W1',
      })),
  )
  return [...sheets, ...sticks]
}

function sheetPurchase(
  context: PlanContext,
  built: Built,
  material: Sheet,
  order: { readonly sheets: number; readonly spare: number },
): Purchase {
  return {
    id: material.id,
    item: `${material.name}, ${context.show.length(material.sheetLength)} × ${context.show.withUnit(material.sheetWidth)}`,
    use: usesOf(built, material.id),
    shop: 'panels',
    need: order.sheets,
    unit: 'sheet',
    packSize: 1,
    packs: packsFor({ need: order.sheets, packSize: 1, unit: 'sheet' }),
    spare: order.spare === 0 ? '' : `${order.spare} spare`,
    ...priceOfSheet(context, built, material),
    firstUsedBy: 'W1',
  }
}

/** Names of the parts cut from it, each once. */
const usesOf = (built: Built, material: string): string =>
  [...new Set(built.parts.filter((p) => p.material === material && p.supply === 'made').map((p) => p.name))].join(', ')

/** The carcass panel's price is asked; the others come from the invented list. */
function priceOfSheet(
  { settle, figures }: PlanContext,
  built: Built,
  material: Sheet,
): Pick<Purchase, 'priceEach' | 'priceKnown'> {
  const listed = listedPrice(figures, material)
  if (material.thickness !== built.boxes.carcassThickness || material.grain || isPrefinishedSheet(material.id)) {
    return { priceEach: listed, priceKnown: priceKnown(figures, listedRow(material)) }
  }
  const priceEach = settle.choice(sheetPrice, undefined, () => ({
    value: listed,
    because: 'an invented price: put in yours',
    from: packPrice,
  }))
  const answered = settle.asked(sheetPrice, undefined) !== undefined
  return {
    priceEach: packPrice({ sheetPrice: priceEach }),
    priceKnown: answered ? 'answered' : priceKnown(figures, listedRow(material)),
  }
}

function listedRow({ id, grain, thickness }: Sheet): string {
  if (grain) return 'price.sheet-plywood'
  const thin = thickness <= THIN ? '-thin' : ''
  return `price.sheet-${isPrefinishedSheet(id) ? 'prefinished' : 'mdf'}${thin}`
}

function listedPrice(figures: PlanContext['figures'], material: Sheet): Money {
  const row = listedRow(material)
  return packPrice({ [row.slice('price.'.length)]: figures.number(row) })
}
