import { returns } from '../../job/chapters/wall.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, nanometres, sum, times } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import {
  type BodyShape,
  followingBody,
  leastWidth,
  mouthDepth,
  type Recess,
  slidInBody,
} from '../shelves/body-shape.ts'

/** A counter stays a little behind the front edge of the return. */
export const mostCounter = formula<{ returnDepth: Length; clear: Length }, Length>(
  {
    id: 'counter.most-depth',
    plain: 'shallower return − its clearance',
    source: 'common practice, no source',
    from: { returnDepth: returns, clear: { id: 'counter.wall-clear' } },
  },
  ({ returnDepth, clear }) => less(returnDepth, clear),
)

/** Depth of a counter: over boxes, doors and overhang to the wall, in an alcove behind the breast face. */
export const counterDepth = formula<
  { box: Length; leafReach: Length; overhang: Length; backGap: Length; most: Length | undefined; cut: CutStep },
  Length
>(
  {
    id: 'counter.depth',
    plain: 'box + leaf and bumper + overhang + gap behind; at most the return − its clearance; down to the cut step',
    source: 'common practice, no source',
    from: {
      box: [{ id: 'box.depth' }, { id: 'box.depth-flat' }],
      overhang: { id: 'counter.overhang' },
      backGap: [{ id: 'box.back-gap' }, { id: 'back.scribe' }],
      most: mostCounter,
    },
  },
  ({ box, leafReach, overhang, backGap, most, cut }) => {
    const full = sum(box, leafReach, overhang, backGap)
    return cut.down(most === undefined || full <= most ? full : most)
  },
)

/**
 * The counter of a recess. Unlike a shelf it may go in tipped, one end low, and be lowered onto the boxes: where the mouth is
 * narrower it still follows the walls when back² + t² ≤ A(0)², front² + t² ≤ A(d)² and free height² ≥ back² − (A(mouth) − 2 play)².
 */
export function counterBody(recess: Recess, ceiling: Length): BodyShape {
  const straight = slidInBody(recess)
  if (straight.shape === 'follows walls') return straight
  const shaped = followingBody(recess)
  return canBeTipped(recess, shaped, less(ceiling, recess.to)) ? shaped : straight
}

function canBeTipped(recess: Recess, body: BodyShape, freeHeight: Length): boolean {
  const thickness = less(recess.to, recess.from)
  const mouth = less(leastWidth(recess, mouthDepth(recess.wall)), times(recess.play, 2))
  const fits = (length: Length, y: Length) => squared(length) + squared(thickness) <= squared(leastWidth(recess, y))
  return (
    fits(body.back, nanometres(0)) &&
    fits(body.front, recess.depth) &&
    freeHeight > 0 &&
    squared(freeHeight) >= squared(body.back) - squared(mouth)
  )
}

const squared = (length: Length): bigint => BigInt(length) ** 2n
