import { boxHeight, carcassThickness, looseShelves, tallHeight } from '../../job/chapters/cabinets.ts'
import { formula } from '../../things/formula.ts'
import { inMetres, type Length, less, longest, nanometres, times, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import { compartmentWidths, looseShelfDepth } from './box-sizes.ts'
import type { Box } from './boxes.ts'

const NM_PER_METRE = 1e9
const PASCALS_PER_NEWTON_MM2 = 1e6
/** Uniform load, simple ends: deflection 5·w·L⁴ / (384·E·I), Wood Handbook table 9-1. */
const UNIFORM_SIMPLE = 5 / 384
/** Second moment of a rectangle: width · thickness³ / 12. */
const RECTANGLE = 12

interface ShelfStrength {
  readonly thickness: Length
  /** N/mm² */
  readonly stiffness: number
  /** Pa */
  readonly load: number
  /** Span over sag. */
  readonly limit: number
}

const STRENGTH_FROM = {
  from: {
    thickness: carcassThickness,
    stiffness: { id: 'stiffness.mdf' },
    load: { id: 'load.loose-shelf' },
    limit: { id: 'sag.loose-shelf' },
  },
  units: { stiffness: 'number', load: 'pressure', limit: 'number' },
} as const

/** Longest span of a plain loose shelf whose sag stays within span / limit; its depth cancels out. Gives a Length. */
export const longestShelfSpan = formula<ShelfStrength, Length>(
  {
    id: 'boxes.shelf-span',
    plain: 'cube root of (384 · E · t³ / (12 · 5 · load · 144))',
    source: 'Architectural Woodwork Standards, 1st edition, 2009, p. 253 and 279',
    ...STRENGTH_FROM,
  },
  ({ thickness, stiffness, load, limit }) => {
    const cubed =
      (stiffness * PASCALS_PER_NEWTON_MM2 * inMetres(thickness) ** 3) / (RECTANGLE * UNIFORM_SIMPLE * load * limit)
    return nanometres(Math.floor(Math.cbrt(cubed) * NM_PER_METRE))
  },
)

/**
 * Height of a strip under the front edge, of the shelf's own panel, that makes a too long shelf stiff enough: shelf and
 * strip counted as loose layers (Σ b·t³/12), so that the glue between them is only a reserve.
 */
export const lipHeight = formula<ShelfStrength & { span: Length; depth: Length }, Length>(
  {
    id: 'boxes.shelf-lip',
    plain: 'cube root of (12 · (I needed − I of the shelf) / t)',
    source: 'Wood Handbook, table 9-1; loose layers',
    from: { ...STRENGTH_FROM.from, span: compartmentWidths, depth: looseShelfDepth },
    units: STRENGTH_FROM.units,
  },
  ({ thickness, stiffness, load, limit, span, depth }) => {
    const [t, b, length] = [inMetres(thickness), inMetres(depth), inMetres(span)]
    const needed = (UNIFORM_SIMPLE * load * b * length ** 3 * limit) / (stiffness * PASCALS_PER_NEWTON_MM2)
    const missing = needed - (b * t ** 3) / RECTANGLE
    return missing <= 0 ? nanometres(0) : nanometres(Math.ceil(Math.cbrt((RECTANGLE * missing) / t) * NM_PER_METRE))
  },
)

/** Load, limit and stiffness that loose shelves of this job are checked with. */
export const shelfStrengthOf = (context: PlanContext, thickness: Length): ShelfStrength => ({
  thickness,
  stiffness: context.figures.number('stiffness.mdf'),
  load: context.figures.number('load.loose-shelf'),
  limit: context.figures.number('sag.loose-shelf'),
})

/** One loose shelf for each pitch of inside height, less one. */
export const usualLooseShelves = formula<{ height: Length; thickness: Length; pitch: Length }, number>(
  {
    id: 'boxes.loose-shelves',
    plain: 'inside height ÷ pitch, up, less 1',
    source: 'common practice, no source',
    gives: 'count',
    from: {
      height: [{ id: 'box.height' }, boxHeight, tallHeight],
      thickness: carcassThickness,
      pitch: { id: 'loose-shelf.pitch' },
    },
  },
  ({ height, thickness, pitch }) => Math.max(0, Math.ceil(less(height, times(thickness, 2)) / pitch) - 1),
)

/** Loose shelves in each box of this height: as asked, else one for each pitch. */
export function looseShelvesOf(context: PlanContext, height: Length, thickness: Length): number {
  const pitch = context.figures.length('loose-shelf.pitch')
  const usual = usualLooseShelves({ height, thickness, pitch })
  return context.settle.choice(looseShelves, undefined, () => ({
    value: usual,
    because: `one for each ${context.show.withUnit(pitch)} of height`,
  }))
}

/** Whether the number of loose shelves was asked for. */
export const shelvesAsked = ({ settle }: PlanContext): boolean => settle.asked(looseShelves, undefined) !== undefined

/** What a loose shelf of a box needs to carry its load: nothing, a lip under its front edge, or a shorter span. */
export type LooseShelfLip =
  | { readonly kind: 'none' }
  | { readonly kind: 'lip'; readonly height: Length }
  | { readonly kind: 'too long'; readonly mostSpan: Length }

/** Height of a lip as it is cut. */
export const lipCut = formula<{ shelfLip: Length; cut: CutStep }, Length>(
  { id: 'boxes.lip', plain: 'height of lip needed, up to the cut step', source: 'geometry' },
  ({ shelfLip, cut }) => cut.up(shelfLip),
)

/** The span of the longest loose shelf: the widest space between two uprights. */
export const widestSpan = ({ compartments: [first = ZERO, ...others] }: Pick<Box, 'compartments'>): Length =>
  longest(first, ...others)

/** The lip a box's loose shelves need; a span that even the deepest lip does not carry is too long. */
export function lipFor(
  context: PlanContext,
  on: { readonly span: Length; readonly insideDepth: Length; readonly carcass: Length },
): LooseShelfLip {
  const { cut, figures } = context
  const strength = shelfStrengthOf(context, on.carcass)
  const plain = longestShelfSpan(strength)
  if (on.span <= plain) return { kind: 'none' }
  const depth = looseShelfDepth({ insideDepth: on.insideDepth, setBack: figures.length('loose-shelf.set-back'), cut })
  const height = lipCut({ shelfLip: lipHeight({ ...strength, span: on.span, depth }), cut })
  return height <= figures.length('loose-shelf.lip-most')
    ? { kind: 'lip', height }
    : { kind: 'too long', mostSpan: plain }
}
