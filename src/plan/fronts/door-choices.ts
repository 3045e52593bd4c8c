import { doors, frontStyle, handle, hinge, hingeSheet, pullSpacing, stileWidth } from '../../job/chapters/hardware.ts'
import type { FrontId } from '../../kinds/front/list.ts'
import { type Length, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'

/** Whether boxes get doors. */
export const hasDoors = (context: PlanContext): boolean =>
  context.settle.choice(doors, undefined, () => ({
    value: 'yes' as const,
    because: 'closed below, open shelves above',
  })) === 'yes'

/** How the doors are made. */
export const frontStyleOf = (context: PlanContext): FrontId =>
  context.settle.choice(frontStyle, undefined, () => ({
    value: 'framed' as const,
    because: 'goes with an old fireplace wall',
  }))

/** Width of stiles and rails; asked only where there are any. */
export const stileWidthOf = (context: PlanContext): Length => {
  const usual = context.figures.length('door.stile')
  return frontStyleOf(context) === 'framed'
    ? context.settle.choice(stileWidth, undefined, () => ({ value: usual, because: 'usual for a painted door' }))
    : usual
}

export interface CupFigures {
  readonly diameter: Length
  readonly fromEdge: Length
  readonly depth: Length
}

/** Hinge cup: the hinge's own sheet, or generic figures until it is there. */
export function cupFigures(context: PlanContext): CupFigures {
  const { settle, figures } = context
  settle.choice(hinge, undefined, () => ({
    value: 'soft-close' as const,
    because: 'doors near a seat should not slam',
  }))
  const generic = [
    figures.length('hinge.cup-diameter'),
    figures.length('hinge.cup-edge'),
    figures.length('hinge.cup-depth'),
  ]
  const [diameter = ZERO, fromEdge = ZERO, depth = ZERO] = settle.choice(hingeSheet, undefined, () => ({
    value: generic,
    origin: 'assumed',
    because: 'generic cup hinge: check against its sheet',
  }))
  return { diameter, fromEdge, depth }
}

export type HandleChoice =
  | { readonly kind: 'knob' }
  | { readonly kind: 'pull'; readonly spacing: Length }
  | { readonly kind: 'none' }

/** Which handles, with the distance of a pull's holes. */
export function handleOf(context: PlanContext): HandleChoice {
  const { settle, figures } = context
  const kind = settle.choice(handle, undefined, () => ({ value: 'knob' as const, because: 'one hole, any door' }))
  if (kind !== 'pull') return { kind }
  const spacing = settle.choice(pullSpacing, undefined, () => ({
    value: figures.length('handle.pull-spacing'),
    origin: 'assumed',
    because: 'a usual spacing: measure the pull',
  }))
  return { kind, spacing }
}
