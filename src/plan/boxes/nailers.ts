import { type Length, less, over } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { Box, BoxMake } from './boxes.ts'

/** Lower edge of a nailer above the box's underside. */
export interface NailerAt {
  readonly at: 'top' | 'middle'
  readonly up: Length
}

/** One under the top; a second at mid-height of a high box. */
export function nailersOf(
  { figures }: PlanContext,
  { height }: Pick<Box, 'height'>,
  { carcass }: Pick<BoxMake, 'carcass'>,
): readonly NailerAt[] {
  const width = figures.length('nailer.width')
  return [
    { at: 'top', up: less(height, carcass, width) },
    ...(height > figures.length('nailer.second-above')
      ? [{ at: 'middle' as const, up: over(less(height, width), 2) }]
      : []),
  ]
}
