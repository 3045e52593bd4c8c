import { edgeAt } from '../../geometry/edge.ts'
import { separationOf, topOf } from '../../geometry/face-rectangle.ts'
import { opening } from '../../job/chapters/firebox.ts'
import { type Lining, type Verdict, verdictOf } from '../../kinds/fuel/face-rule.ts'
import { questionKey } from '../../things/field.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, longest, shortest, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { RunnableWall } from '../survey/survey.ts'
import type { BesideFire } from './beside-fire.ts'

/** A part of wood near the hot side of a breast, and what the codes say of it. */
export interface BesideBreast {
  readonly part: Part
  readonly gap: Length
  readonly verdict: Exclude<Verdict, 'passes'>
}

/** The parts of the bay beside a masonry fire that no code clears outright: asked about, or too near as measured. */
export function woodBesideBreast(
  { figures }: PlanContext,
  here: BesideFire,
  parts: readonly Part[],
): readonly BesideBreast[] {
  if (!here.fire.masonry.hot) return []
  return parts
    .filter((part) => part.bay === here.beside.bay.id && part.placement.y < here.faceY)
    .flatMap((part) => {
      const gap = gapTo(here, part)
      const wood = { gap, toOpening: toOpening(here, part), linings: liningsAt(here, part) }
      const said = here.fire.profiles.map((profile) => verdictOf(figures, profile, wood))
      const verdict = said.includes('stop') ? 'stop' : said.includes('ask') ? 'ask' : undefined
      return verdict === undefined ? [] : [{ part, gap, verdict }]
    })
}

/** Between a part and the breast's side, at the part's own heights, back and front: the least of them. */
function gapTo({ beside, breast, side }: BesideFire, { placement }: Part): Length {
  const { x, dx, z, dz } = placement
  const faces = [z, sum(z, dz)].flatMap((at) => sidesAt(beside, side, at))
  const nominal = side === 'left' ? breast.originX : sum(breast.originX, breast.width)
  const gaps = (faces.length === 0 ? [nominal] : faces).map((face) =>
    side === 'left' ? less(face, sum(x, dx)) : less(x, face),
  )
  const [first = ZERO, ...others] = gaps
  return longest(ZERO, shortest(first, ...others))
}

/** Where the return on the breast's side stands at a height, back and front, in the wall's x; none on a flat wall. */
function sidesAt(beside: RunnableWall, side: 'left' | 'right', z: Length): readonly Length[] {
  if (beside.kind === 'flat') return []
  const edges = side === 'left' ? beside.right : beside.left
  return [edges.back, edges.front].map((edge) => sum(beside.originX, edgeAt(edge, z)))
}

function toOpening({ breast, fire }: BesideFire, { placement }: Part): Length | undefined {
  if (fire.opening === undefined || fire.waitsFor.includes(questionKey(breast.bay.id, opening))) return undefined
  const { x, z, dx, dz } = placement
  return separationOf(fire.opening, { x: less(x, breast.originX), z, width: dx, height: dz }).beside
}

/** Low down stands the firebox, over the opening the flue; a tall piece stands beside both. */
function liningsAt({ fire, side }: BesideFire, { placement }: Part): readonly Lining[] {
  const { firebox, flue } = fire.masonry[side]
  if (fire.opening === undefined) return [firebox, flue]
  const head = topOf(fire.opening)
  return [...(placement.z < head ? [firebox] : []), ...(sum(placement.z, placement.dz) > head ? [flue] : [])]
}
