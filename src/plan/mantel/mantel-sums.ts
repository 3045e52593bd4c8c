import type { FaceRectangle } from '../../geometry/face-rectangle.ts'
import { opening } from '../../job/chapters/firebox.ts'
import { breastSize } from '../../job/chapters/wall.ts'
import type { WoodRule } from '../../kinds/fuel/wood-rule.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, nanometres, over, shortest, sum, times } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import { lowestUnderside, type PieceByFire } from './clearance.ts'

// Inputs named like a question (`mantelLength`, `mantelThickness`) or a row of figures (`overSide`) find it by their name.

/** Length of the mantel top that is suggested: the opening and something beyond it, within the breast. */
export const suggestedLength = formula(
  {
    id: 'mantel.length-suggested',
    plain: 'opening + 2 × beyond it, at most the breast − 2 × clear at its edges, down to the cut step',
    source: 'common practice, no source',
    from: { openingWidth: opening, breastWidth: breastSize },
    units: { smallest: 'length' },
  },
  (of: {
    readonly openingWidth: Length
    readonly beyondOpening: Length
    readonly breastWidth: Length
    readonly breastClear: Length
    readonly smallest: Length
    readonly cut: CutStep
  }): Length => {
    const most = less(of.breastWidth, times(of.breastClear, 2))
    const wished = of.openingWidth === 0 ? most : sum(of.openingWidth, times(of.beyondOpening, 2))
    return longest(of.cut.down(shortest(wished, most)), of.smallest)
  },
)

/** Left end of the mantel on the breast: centred over the opening, moved in where it would pass the breast's edge. */
export const mantelX = formula(
  {
    id: 'mantel.x',
    plain: 'centred over the opening, within the breast; centred on the breast where it fits no way',
    source: 'geometry',
    from: { openingX: opening, openingWidth: opening, breastWidth: breastSize },
  },
  (of: {
    readonly openingX: Length
    readonly openingWidth: Length
    readonly breastWidth: Length
    readonly breastClear: Length
    readonly mantelLength: Length
  }): Length => {
    const room = less(of.breastWidth, of.mantelLength, times(of.breastClear, 2))
    if (of.openingWidth === 0 || room < 0) return over(less(of.breastWidth, of.mantelLength), 2)
    const centred = sum(of.openingX, over(less(of.openingWidth, of.mantelLength), 2))
    return shortest(longest(centred, of.breastClear), less(of.breastWidth, of.breastClear, of.mantelLength))
  },
)

/** Length of the beam under the top. */
export const beamLength = formula(
  { id: 'mantel.beam-length', plain: 'mantel length − 2 × top beyond its beam', source: 'geometry' },
  (of: { readonly mantelLength: Length; readonly overSide: Length }): Length =>
    less(of.mantelLength, times(of.overSide, 2)),
)

/** How far the beam stands out of the face. */
export const beamDepth = formula(
  { id: 'mantel.beam-depth', plain: 'mantel depth − top beyond its frieze', source: 'geometry' },
  (of: { readonly mantelDepth: Length; readonly overFront: Length }): Length => less(of.mantelDepth, of.overFront),
)

/** Height of the mantel's upper face above the level line's zero. */
export const mantelTop = formula(
  { id: 'mantel.top', plain: 'underside + frieze + layers × thickness', source: 'geometry' },
  (of: {
    readonly mantelUnderside: Length
    readonly mantelFrieze: Length
    readonly mantelLayers: number
    readonly mantelThickness: Length
  }): Length => sum(of.mantelUnderside, of.mantelFrieze, times(of.mantelThickness, of.mantelLayers)),
)

/** The lowest underside at which every layer meets every rule; undefined where no height helps. */
export const lowestOverFire = formula(
  {
    id: 'mantel.lowest',
    plain: 'opening’s top + the least distance at which every layer meets every rule, each with its own projection',
    source: 'the code chosen, its figures in shared/codes.json, and the appliance’s manual',
    from: { openingZ: opening, openingHeight: opening },
  },
  (of: {
    readonly openingZ: Length
    readonly openingHeight: Length
    readonly given: {
      readonly opening: FaceRectangle
      readonly pieces: readonly PieceByFire[]
      readonly rules: readonly WoodRule[]
    }
  }): Length | undefined =>
    lowestUnderside(of.given.opening, { underside: nanometres(0), pieces: of.given.pieces }, of.given.rules),
)

/** Underside where no text names a distance. */
export const usualOverFire = formula(
  {
    id: 'mantel.usual-underside',
    plain: 'opening’s height above the floor + its own height + the usual distance',
    source: 'common practice, no source',
    from: { openingZ: opening, openingHeight: opening },
  },
  (of: { readonly openingZ: Length; readonly openingHeight: Length; readonly aboveOpening: Length }): Length =>
    sum(of.openingZ, of.openingHeight, of.aboveOpening),
)

/** A height rounded up to the step mantels are set at. */
export const undersideFrom = formula(
  {
    id: 'mantel.underside',
    plain: 'least height, up to the step a mantel is set at',
    source: 'common practice, no source',
    from: { leastHeight: [lowestOverFire, usualOverFire] },
  },
  (of: { readonly leastHeight: Length; readonly heightStep: Length }): Length =>
    nanometres(Math.ceil(of.leastHeight / of.heightStep) * of.heightStep),
)

/** Length a top layer is sawn at. */
export const topRoughLength = formula(
  {
    id: 'mantel.top-rough-length',
    plain: 'mantel length + left long, up to the cut step',
    source: 'common practice, no source',
  },
  (of: { readonly mantelLength: Length; readonly topLong: Length; readonly cut: CutStep }): Length =>
    of.cut.up(sum(of.mantelLength, of.topLong)),
)

/** Depth a top layer is sawn at. */
export const topRoughDepth = formula(
  {
    id: 'mantel.top-rough-depth',
    plain: 'mantel depth + spare for scribing it to the face, up to the cut step',
    source: 'common practice, no source',
  },
  (of: { readonly mantelDepth: Length; readonly backScribe: Length; readonly cut: CutStep }): Length =>
    of.cut.up(sum(of.mantelDepth, of.backScribe)),
)

/** Depth of ends and soffit, behind the frieze. */
export const behindFrieze = formula(
  { id: 'mantel.behind-frieze', plain: 'beam depth − panel', source: 'geometry' },
  (of: { readonly beamDepth: Length; readonly mantelThickness: Length }): Length =>
    less(of.beamDepth, of.mantelThickness),
)

/** Length of the soffit, between the ends. */
export const soffitLength = formula(
  { id: 'mantel.soffit-length', plain: 'beam length − 2 × panel', source: 'geometry' },
  (of: { readonly beamLength: Length; readonly mantelThickness: Length }): Length =>
    less(of.beamLength, times(of.mantelThickness, 2)),
)

/** Length of the ledger on the face, shorter than the inside of the beam. */
export const ledgerLength = formula(
  {
    id: 'mantel.ledger-length',
    plain: 'beam length − 2 × panel − play, down to the cut step',
    source: 'common practice, no source',
  },
  (of: {
    readonly beamLength: Length
    readonly mantelThickness: Length
    readonly ledgerEase: Length
    readonly cut: CutStep
  }): Length => of.cut.down(less(of.beamLength, times(of.mantelThickness, 2), of.ledgerEase)),
)

/** Height of ledger and blocks: what the beam leaves over its soffit, at most what a ledger needs. */
export const ledgerHeight = formula(
  {
    id: 'mantel.ledger-height',
    plain: 'frieze − panel, at most the usual ledger',
    source: 'common practice, no source',
  },
  (of: { readonly mantelFrieze: Length; readonly mantelThickness: Length; readonly ledgerMost: Length }): Length =>
    shortest(less(of.mantelFrieze, of.mantelThickness), of.ledgerMost),
)

/** Length of a block, from the ledger to the frieze. */
export const blockLength = formula(
  { id: 'mantel.block-length', plain: 'beam depth − panel − ledger', source: 'geometry' },
  (of: { readonly beamDepth: Length; readonly mantelThickness: Length; readonly ledgerThick: Length }): Length =>
    less(of.beamDepth, of.mantelThickness, of.ledgerThick),
)

/** Blocks behind the frieze, evenly spaced: one a pitch or less, two at least. */
export const blockCount = formula(
  {
    id: 'mantel.blocks',
    plain: 'ledger length / pitch, up to a whole number, at least 2',
    source: 'common practice, no source',
    gives: 'count',
  },
  (of: { readonly ledgerLength: Length; readonly blockPitch: Length }): number =>
    Math.max(2, Math.ceil(of.ledgerLength / of.blockPitch)),
)

/** From the ledger's end to the middle of the first block: half a spacing, so that a cable finds room beside it. */
export const firstBlock = formula(
  {
    id: 'mantel.first-block',
    plain: 'ledger length / blocks / 2',
    source: 'common practice, no source',
    from: { blocks: blockCount },
  },
  (of: { readonly ledgerLength: Length; readonly blocks: number }): Length => over(of.ledgerLength, of.blocks * 2),
)
