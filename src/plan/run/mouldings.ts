import { kickFacing, newCrown } from '../../job/chapters/floor-and-trim.ts'
import { formula } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import { inMetres, type Length, ZERO } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { FixingLine } from '../fixings/fixing-line.ts'
import { parseMark } from '../marks.ts'

/** Metres of moulding to buy: the lengths in front, twice the projection at each outside mitre, and waste. */
export const mouldingMetres = formula<
  { lengths: readonly Length[]; sides: readonly Length[]; projection: Length; mouldingWaste: number },
  number
>(
  {
    id: 'trim.moulding',
    plain: '(front lengths + show sides + 2 × projection at each outside mitre) × (1 + waste), in metres',
    source: 'common practice, no source',
    gives: 'number',
    from: { projection: { id: 'crown' }, mouldingWaste: { id: 'moulding.waste' } },
    units: { lengths: 'length', sides: 'length', mouldingWaste: 'number' },
  },
  ({ lengths, sides, projection, mouldingWaste }) => {
    const metres = [...lengths, ...sides].reduce((total, length) => total + inMetres(length), 0)
    return (metres + 2 * sides.length * inMetres(projection)) * (1 + mouldingWaste)
  },
)

/** New baseboard along the kick plates and new crown along the tall boxes, where they were asked for. */
export function mouldingLines(
  context: PlanContext,
  work: { readonly boxes: readonly Box[]; readonly parts: readonly Part[] },
): readonly FixingLine[] {
  const { settle, figures } = context
  const waste = figures.number('moulding.waste')
  const runs = [...new Set(work.boxes.map((box) => box.run))]
  if (runs.length === 0) return []
  const faced = settle.choice(kickFacing, undefined, () => ({
    value: 'plain' as const,
    because: 'nothing is added unasked',
  }))
  const crowned = settle.choice(newCrown, undefined, () => ({
    value: 'no' as const,
    because: 'nothing is added unasked',
  }))
  const plates = work.parts.filter((part) => parseMark(part.mark)?.role === 'P')
  const baseboard = mouldingMetres({
    lengths: plates.map((part) => part.length),
    sides: [],
    projection: ZERO,
    mouldingWaste: waste,
  })
  const tall = runs.filter((run) => run.kind === 'tall')
  const crown = tall.reduce((metres, run) => metres + crownOf(work, run, waste), 0)
  return [
    ...(faced === 'baseboard'
      ? [line('moulding.baseboard', 'baseboard to match', 'facing of the kick plates', baseboard)]
      : []),
    ...(crowned === 'yes' ? [line('moulding.crown', 'crown to match', 'along the tall boxes', crown)] : []),
  ]
}

function crownOf(
  { boxes, parts }: { readonly boxes: readonly Box[]; readonly parts: readonly Part[] },
  run: Box['run'],
  mouldingWaste: number,
): number {
  const free = (['left', 'right'] as const).filter((side) => run[side].fit === 'gable' || run[side].fit === 'open')
  const depth = boxes.find((box) => box.run === run)?.depth
  const filler = parts.find((part) => part.id === `${run.bay.id}/top-filler`)
  return mouldingMetres({
    lengths: [filler?.length ?? run.width],
    sides: depth === undefined ? [] : free.map(() => depth),
    projection: run.wall.crown.projection,
    mouldingWaste,
  })
}

const line = (id: string, item: string, use: string, count: number): FixingLine => ({
  id,
  item,
  use,
  count,
  unit: 'm',
  price: 'price.moulding',
})
