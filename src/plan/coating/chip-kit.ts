import type { SurfaceId } from '../../things/part.ts'
import { litres, type Volume } from '../../units/volume.ts'
import type { PlanContext } from '../context.ts'
import type { CoatingChoices } from './coating-choices.ts'
import type { CoatingLine } from './coating-lines.ts'

/** One labelled jar that stays with the client, for chips. */
export interface ChipJar {
  readonly surface: SurfaceId
  readonly product: string
  readonly colour: string
  readonly litres: Volume
  /** Filled from the tins bought for the job, or by the spray shop with its own paint. */
  readonly from: 'tin' | 'spray shop'
}

/** A jar of the top coat of each surface that is painted. */
export function chipKit(
  { figures }: PlanContext,
  choices: CoatingChoices,
  lines: readonly CoatingLine[],
): readonly ChipJar[] {
  const jar = litres(figures.number('chip-kit.jar'))
  const tops = lines.filter((line) => line.layer === 'top')
  const sprayed = choices.where === 'spray shop' ? sprayShopTop(choices) : []
  return [
    ...sprayed.map((product) => ({ ...jarOf(choices, 'built-in'), product, litres: jar, from: 'spray shop' as const })),
    ...tops.map(({ surface, product }) => ({ ...jarOf(choices, surface), product, litres: jar, from: 'tin' as const })),
  ]
}

const jarOf = ({ colours }: CoatingChoices, surface: SurfaceId) => ({ surface, colour: colours[surface] })

const sprayShopTop = ({ systems }: CoatingChoices): readonly string[] =>
  (systems['built-in']?.layers ?? []).filter((layer) => layer.id === 'top').map((layer) => layer.product)
