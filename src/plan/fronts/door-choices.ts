import { chosenRow, HANDLES, type Handle, type HardwareItem, HINGES } from '../../figures/hardware.ts'
import { doors, frontStyle, handle, hinge, hingeSheet, pullSpacing, stileWidth } from '../../job/chapters/hardware.ts'
import { FRONTS, type FrontId } from '../../kinds/front/list.ts'
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
  return FRONTS[frontStyleOf(context)].asksFrame
    ? context.settle.choice(stileWidth, undefined, () => ({ value: usual, because: 'usual for a painted door' }))
    : usual
}

/** Whether a figure is the maker's own, or a generic one that is printed as to be checked. */
export type SheetKnown = 'from its sheet' | 'generic'

/** Added to a generic figure wherever it is printed. */
export const checkWords = (known: SheetKnown, what: string): string =>
  known === 'generic' ? `: check against the ${what}’s sheet` : ''

export interface CupFigures {
  readonly diameter: Length
  readonly fromEdge: Length
  readonly depth: Length
  /** Screw line of the plate behind the front edge of the box side. */
  readonly plateBack: Length
  readonly known: SheetKnown
}

/** Hinge cup and plate: the hinge's own sheet, or generic figures until it is there. */
export function cupFigures(context: PlanContext): CupFigures {
  const { settle, figures } = context
  const generic = [
    figures.length('hinge.cup-diameter'),
    figures.length('hinge.cup-edge'),
    figures.length('hinge.cup-depth'),
    figures.length('hinge.plate-back'),
  ]
  const [diameter = ZERO, fromEdge = ZERO, depth = ZERO, plateBack = figures.length('hinge.plate-back')] =
    settle.choice(hingeSheet, undefined, () => ({
      value: generic,
      origin: 'assumed',
      because: 'generic cup hinge: check against its sheet',
    }))
  const known = settle.asked(hingeSheet, undefined) === undefined ? 'generic' : 'from its sheet'
  return { diameter, fromEdge, depth, plateBack, known }
}

/** The hinge as it is bought. */
export const hingeOf = ({ settle }: PlanContext): HardwareItem =>
  chosenRow(
    HINGES,
    settle.choice(hinge, undefined, () => ({ value: 'soft-close', because: 'doors near a seat should not slam' })),
  )

export interface HandleChoice {
  readonly handle: Handle
  /** Between the two holes of a pull. */
  readonly spacing: Length
}

/** Which handles, with the distance of a pull's holes. */
export function handleOf(context: PlanContext): HandleChoice {
  const { settle, figures } = context
  const chosen = chosenRow(
    HANDLES,
    settle.choice(handle, undefined, () => ({ value: 'knob', because: 'one hole, any door' })),
  )
  if (chosen.holes !== 2) return { handle: chosen, spacing: ZERO }
  const spacing = settle.choice(pullSpacing, undefined, () => ({
    value: figures.length('handle.pull-spacing'),
    origin: 'assumed',
    because: 'a usual spacing: measure the pull',
  }))
  return { handle: chosen, spacing }
}
