import { type FaceRectangle, rightOf } from '../../geometry/face-rectangle.ts'
import { fuel, linings, realMasonry } from '../../job/chapters/firebox.ts'
import type { FuelKind } from '../../kinds/fuel/contract.ts'
import type { Lining } from '../../kinds/fuel/face-rule.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import { type Length, less, longest, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import { masonryNotConfirmed, notMasonry } from './firebox-messages.ts'

/** Masonry between the inside of each lining and one side of the breast. */
export interface JambLinings {
  readonly firebox: Lining
  readonly flue: Lining
}

/** Whether the breast grows hot at its sides, and how thick it is there. */
export interface MasonryFacts {
  /** Its smoke rises in masonry, or nobody has looked yet. */
  readonly hot: boolean
  readonly left: JambLinings
  readonly right: JambLinings
  readonly messages: readonly Message[]
}

const NOT_KNOWN: JambLinings = {
  firebox: { of: 'firebox', masonry: undefined, known: 'from the opening' },
  flue: { of: 'flue', masonry: undefined, known: 'measured' },
}
const COLD: MasonryFacts = { hot: false, left: NOT_KNOWN, right: NOT_KNOWN, messages: [] }

interface On {
  readonly kind: FuelKind
  /** Undefined while it is not measured. */
  readonly opening: FaceRectangle | undefined
}

/** Real masonry is what the masonry rule is written for; under an appliance it only tells whether the breast's sides grow hot. */
export function masonryFacts(context: PlanContext, wall: BreastWall, on: On): MasonryFacts {
  const { kind } = on
  if (!kind.heatsMasonry) return COLD
  const { bay } = wall
  const real = context.settle.measured(realMasonry, bay, () => ({ value: true, because: 'until somebody has looked' }))
  const where = { about: questionKey(bay.id, realMasonry), place: bay.name }
  const values = { fuel: kind.says }
  const known = real.waitsFor.length === 0
  if (known && !real.value)
    return kind.governedBy === 'masonry rule'
      ? { ...COLD, messages: [raise(notMasonry, { ...where, about: questionKey(bay.id, fuel) }, values)] }
      : COLD
  return {
    hot: true,
    ...jambsOf(context, wall, on.opening),
    messages: known ? [] : [raise(masonryNotConfirmed, where, values)],
  }
}

/** How thick the masonry is, as measured; the firebox's otherwise from the opening, the flue's not known. */
function jambsOf(
  { settle }: PlanContext,
  wall: BreastWall,
  opening: FaceRectangle | undefined,
): Pick<MasonryFacts, 'left' | 'right'> {
  const asked = settle.asked(linings, wall.bay)
  if (asked !== undefined && asked.length > 0) {
    const [fireboxLeft = ZERO, fireboxRight = ZERO, flueLeft = ZERO, flueRight = ZERO] = asked
    return { left: measured(fireboxLeft, flueLeft), right: measured(fireboxRight, flueRight) }
  }
  if (opening === undefined) return { left: NOT_KNOWN, right: NOT_KNOWN }
  const seen = (masonry: Length): JambLinings => ({ ...NOT_KNOWN, firebox: { ...NOT_KNOWN.firebox, masonry } })
  return {
    left: seen(longest(ZERO, opening.x)),
    right: seen(longest(ZERO, less(wall.width, rightOf(opening)))),
  }
}

const measured = (firebox: Length, flue: Length): JambLinings => ({
  firebox: { of: 'firebox', masonry: firebox, known: 'measured' },
  flue: { of: 'flue', masonry: flue, known: 'measured' },
})
