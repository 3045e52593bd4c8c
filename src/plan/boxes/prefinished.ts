import { boxInside } from '../../job/chapters/box-inside.ts'
import { boxHeight, tallHeight } from '../../job/chapters/cabinets.ts'
import { formula, within } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import { inMetres, type Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { prefinishedPanel } from '../materials.ts'
import { fixedShelfLength, insideHeight, insideWidth, looseShelfLength } from './box-sizes.ts'
import type { Box } from './boxes.ts'

/** Whether the boxes come out of a panel that is finished on both faces, with a band on the edges that show. */
export const isPrefinished = ({ settle, bays }: PlanContext): boolean =>
  bays.some((bay) => bay.kind !== 'breast') &&
  settle.choice(boxInside, undefined, () => ({ value: 'painted' as const, because: 'one panel for everything' })) ===
    'prefinished'

/** The parts of a box as its inside is finished: of a prefinished panel nothing is coated. */
export function insideFinished(context: PlanContext, parts: readonly Part[]): readonly Part[] {
  if (!isPrefinished(context)) return parts
  return parts.map(({ coat: _coat, ...part }) => ({
    ...part,
    material: prefinishedPanel(part.thickness),
    details: [
      ...part.details.filter((detail) => detail !== INSIDE_PAINTED),
      ...(isBanded(part) ? ['edge band on its front edge; not painted'] : ['not painted']),
    ],
  }))
}

/** Inside faces are seen when a door opens, so the panels of a painted box are coated all round. */
export const INSIDE_PAINTED = 'inside is painted too: it is seen when a door opens'

/** Metres of edge band on the boxes made here; 0 for painted ones. */
export function bandMetres(context: PlanContext, boxes: readonly Box[], parts: readonly Part[]): number {
  if (!isPrefinished(context)) return 0
  const ofBoxes = boxes.map((box) => {
    const own = parts.filter((p) => p.id.startsWith(`${box.id}/`) && p.supply === 'made' && isBanded(p))
    return within(box.id, () => boxBand({ frontEdges: own.map((p) => p.length) }))
  })
  return bandInAll({ boxes: ofBoxes })
}

/** A panel whose front edge shows, and that has no coat of its own: leaves and fronts are painted. */
const isBanded = (part: Part): boolean => part.shows.includes('front edge')

/** Front edges of one box: 2 sides, bottom, top or front rail, dividers and shelves; metres. */
export const boxBand = formula<{ frontEdges: readonly Length[] }, number>(
  {
    id: 'box.edge-band',
    plain: '2 × height + 2 × inside width + each shelf and divider, in metres',
    source: 'geometry',
    gives: 'number',
    from: {
      frontEdges: [
        insideWidth,
        insideHeight,
        looseShelfLength,
        fixedShelfLength,
        { id: 'box.height' },
        boxHeight,
        tallHeight,
      ],
    },
  },
  ({ frontEdges }) => frontEdges.reduce((metres, length) => metres + inMetres(length), 0),
)

/** Edge band of all boxes, metres as it is glued on. */
const bandInAll = formula<{ boxes: readonly number[] }, number>(
  {
    id: 'boxes.edge-band',
    plain: 'sum of the boxes',
    source: 'arithmetic',
    gives: 'number',
    from: { boxes: boxBand },
    units: { boxes: 'number' },
  },
  ({ boxes }) => boxes.reduce((metres, box) => metres + box, 0),
)
