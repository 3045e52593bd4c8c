import { inMetres, type Length, less, nanometres, size, sum, times } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BodyShape } from '../shelves/body-shape.ts'

/** One length of a counter between two joints, measured from the counter's back left corner. */
export interface CounterPiece {
  readonly from: Length
  readonly back: Length
  readonly front: Length
  readonly roughLength: Length
  readonly joinsLeft: boolean
  readonly joinsRight: boolean
}

interface Whole {
  readonly body: BodyShape
  readonly thickness: Length
  readonly roughDepth: Length
  /** x of the joints between boxes, in the bay's own x. */
  readonly boxJoints: readonly Length[]
}

/** The counter in as few pieces as a sheet and two people allow, joined over joints between boxes. */
export function counterPieces(context: PlanContext, whole: Whole): readonly CounterPiece[] {
  const { figures, cut } = context
  const spare = figures.length('top.long')
  const rough = cut.up(sum(whole.body.extent, spare))
  const count = piecesNeeded(context, whole, rough)
  const joints = jointsFor(whole, count)
  const ends = [nanometres(0), ...joints.map((x) => less(x, whole.body.x)), whole.body.back]
  return ends.slice(1).map((to, i) => {
    const from = ends[i] ?? nanometres(0)
    const joinsLeft = i > 0
    const joinsRight = i < ends.length - 2
    const leftEnd = joinsLeft ? nanometres(0) : whole.body.offsetLeft
    const rightEnd = joinsRight ? nanometres(0) : less(sum(whole.body.front, whole.body.offsetLeft), whole.body.back)
    const back = less(to, from)
    const front = sum(back, rightEnd, nanometres(-leftEnd))
    const slant = sum(size(leftEnd), size(rightEnd))
    const roughLength =
      joinsLeft || joinsRight ? cut.up(sum(back, slant, joinsLeft && joinsRight ? nanometres(0) : spare)) : rough
    return { from, back, front, roughLength, joinsLeft, joinsRight }
  })
}

/** Least count of pieces that a trimmed sheet and the mass two people lift allow. */
function piecesNeeded({ figures }: PlanContext, whole: Whole, rough: Length): number {
  const usable = less(figures.length('sheet.length'), times(figures.length('sheet.trim'), 2))
  const mass = inMetres(rough) * inMetres(whole.roughDepth) * inMetres(whole.thickness) * figures.number('density.mdf')
  return Math.max(1, Math.ceil(rough / usable), Math.ceil(mass / figures.number('lift.two')))
}

/** Each joint goes to the joint between boxes nearest to an even division; none twice. */
function jointsFor({ body, boxJoints }: Whole, count: number): readonly Length[] {
  const inside = boxJoints.filter((x) => x > body.x && x < sum(body.x, body.back))
  const chosen = Array.from({ length: count - 1 }, (_, i) => {
    const even = sum(body.x, times(body.back, (i + 1) / count))
    return inside.toSorted((a, b) => size(less(a, even)) - size(less(b, even)))[0] ?? even
  })
  return [...new Set(chosen)].toSorted((a, b) => a - b)
}
