import { type Length, less, negated } from '../units/length.ts'
import type { PlanContext } from './context.ts'

/** A height as it is set out from the level line struck across the wall: `34 1/2 below the line`. z = above the highest floor point. */
export function fromLevelLine({ figures, show }: Pick<PlanContext, 'figures' | 'show'>, z: Length): string {
  const above = less(z, figures.length('level-line.height'))
  if (above === 0) return 'on the line'
  return above > 0 ? `${show.length(above)} above the line` : `${show.length(negated(above))} below the line`
}
