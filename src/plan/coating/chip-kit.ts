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
}

/** A jar of the top coat of each surface; that of a spray shop is asked for with the work. */
export const chipKit = (
  { figures }: PlanContext,
  { colours, systems, where }: CoatingChoices,
  lines: readonly CoatingLine[],
): readonly ChipJar[] =>
  SURFACES.flatMap((surface) => {
    const line = lines.find((l) => l.surface === surface && l.layer === 'top')
    const sprayed = surface === 'built-in' && where === 'spray shop'
    const product = sprayed ? systems[surface]?.layers.find(({ id }) => id === 'top')?.product : line?.product
    if (product === undefined) return []
    return [{ surface, product, colour: colours[surface], litres: litres(figures.number('chip-kit.jar')) }]
  })

const SURFACES: readonly SurfaceId[] = ['built-in', 'masonry', 'wall']
