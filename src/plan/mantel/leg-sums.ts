import { hearthTop } from '../../job/chapters/mantel.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, shortest, sum, times } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'

/** Height of a leg: from the hearth or the floor to the mantel's underside. */
export const legHeight = formula(
  {
    id: 'leg.height',
    plain: 'mantel’s underside − foot (hearth or floor)',
    source: 'geometry',
    from: { foot: hearthTop },
  },
  (of: { readonly mantelUnderside: Length; readonly foot: Length }): Length => less(of.mantelUnderside, of.foot),
)

/** How far a leg stands out that is suggested: as usual, within the frieze, and no further than the fire allows there. */
export const suggestedLegDepth = formula(
  {
    id: 'leg.depth-suggested',
    plain:
      'usual, at most the beam’s depth and what every rule allows at that place, down to the cut step; a panel at least',
    source: 'the code chosen and the appliance’s manual; common practice, no source',
    from: { usual: { id: 'leg.depth' } },
    units: { allowed: 'length' },
  },
  (of: {
    readonly usual: Length
    readonly beamDepth: Length
    readonly allowed: Length
    readonly mantelThickness: Length
    readonly cut: CutStep
  }): Length => longest(of.mantelThickness, of.cut.down(shortest(of.usual, of.beamDepth, of.allowed))),
)

/** Depth of a leg behind its front board: what its sides or its packing fill. */
export const legReturn = formula(
  { id: 'leg.return', plain: 'leg stands out − panel', source: 'geometry' },
  (of: { readonly legDepth: Length; readonly mantelThickness: Length }): Length =>
    less(of.legDepth, of.mantelThickness),
)

/** Length a leg is sawn at: its foot is cut to the hearth or floor on site. */
export const legRoughLength = formula(
  {
    id: 'leg.rough-length',
    plain: 'leg height + left long at the foot, up to the cut step',
    source: 'common practice, no source',
  },
  (of: { readonly legHeight: Length; readonly footLong: Length; readonly cut: CutStep }): Length =>
    of.cut.up(sum(of.legHeight, of.footLong)),
)

/** Width a side of a leg is sawn at: its back edge is scribed to the face. */
export const legRoughReturn = formula(
  {
    id: 'leg.rough-return',
    plain: 'side of the leg + spare for scribing it to the face, up to the cut step',
    source: 'common practice, no source',
  },
  (of: { readonly legReturn: Length; readonly backScribe: Length; readonly cut: CutStep }): Length =>
    of.cut.up(sum(of.legReturn, of.backScribe)),
)

/** Length of a core block, between the sides. */
export const coreLength = formula(
  { id: 'leg.core-length', plain: 'leg width − 2 × panel, down to the cut step', source: 'geometry' },
  (of: { readonly legWidth: Length; readonly mantelThickness: Length; readonly cut: CutStep }): Length =>
    of.cut.down(less(of.legWidth, times(of.mantelThickness, 2))),
)

/** Core blocks in one leg: one a pitch or less, foot and head at least. */
export const coreCount = formula(
  {
    id: 'leg.cores',
    plain: 'leg height / pitch, up to a whole number, at least 2',
    source: 'common practice, no source',
    gives: 'count',
  },
  (of: { readonly legHeight: Length; readonly blockPitch: Length }): number =>
    Math.max(2, Math.ceil(of.legHeight / of.blockPitch)),
)
