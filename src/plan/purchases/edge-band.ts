import { formula, within } from '../../things/formula.ts'
import type { Purchase } from '../../things/supplies.ts'
import { bandMetres } from '../boxes/prefinished.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'
import { priceKnown } from '../price-known.ts'
import { packPrice, packsFor } from './packs.ts'

/** Edge band for boxes of prefinished panel, by the roll. */
export function edgeBandPurchases(context: PlanContext, { boxes, parts }: Built): readonly Purchase[] {
  const { figures } = context
  return within('edge-band', () => {
    const edgeBand = bandMetres(context, boxes.boxes, parts)
    if (edgeBand === 0) return []
    const need = bandNeeded({ edgeBand, bandSpare: figures.number('edge-band.spare') })
    const packSize = figures.number('pack.edge-band')
    return [
      {
        id: 'edge-band',
        item: 'edge band to match the prefinished panel, pre-glued, as wide as the panel is thick and a little over',
        use: 'front edges of the boxes',
        shop: 'hardware',
        need,
        unit: 'm',
        packSize,
        packs: packsFor({ need, packSize, unit: 'm' }),
        spare: 'a tenth spare is in the need',
        priceEach: packPrice({ 'edge-band': figures.number('price.edge-band'), holds: packSize }),
        priceKnown: priceKnown(figures, 'price.edge-band'),
        firstUsedBy: 'W2',
      },
    ]
  })
}

/** Metres of edge band to buy. */
export const bandNeeded = formula<{ edgeBand: number; bandSpare: number }, number>(
  {
    id: 'purchase.edge-band',
    plain: 'front edges × (1 + share bought over it)',
    source: 'common practice, no source',
    gives: 'number',
    from: { edgeBand: { id: 'boxes.edge-band' }, bandSpare: { id: 'edge-band.spare' } },
    units: { edgeBand: 'number', bandSpare: 'number' },
  },
  ({ edgeBand, bandSpare }) => edgeBand * (1 + bandSpare),
)
