import { backThickness, carcassThickness } from '../../job/chapters/cabinets.ts'
import { frontThickness } from '../../job/chapters/hardware.ts'
import type { Field } from '../../things/field.ts'
import { type Length, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { hasDoors } from '../fronts/door-choices.ts'

/** Thickness of the carcass panel: the caliper's, or the nominal one until then. */
export const carcassThicknessOf = (context: PlanContext): Length =>
  measuredOrNominal(context, carcassThickness, 'panel.carcass')

/** Thickness of the box backs. */
export const backThicknessOf = (context: PlanContext): Length => measuredOrNominal(context, backThickness, 'panel.back')

/** Thickness of the leaves; 0 without doors. */
export const frontThicknessOf = (context: PlanContext): Length =>
  hasDoors(context) ? measuredOrNominal(context, frontThickness, 'panel.front') : ZERO

const measuredOrNominal = (context: PlanContext, field: Field<Length>, figure: string): Length =>
  context.settle.choice(field, undefined, () => ({
    value: context.figures.length(figure),
    origin: 'assumed',
    because: 'its name at the counter: put the caliper on it',
  }))
