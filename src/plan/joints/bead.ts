import { backedDepth } from '../../kinds/joint/backed-caulk.ts'
import { beadDepth } from '../../kinds/joint/bead-depth.ts'
import { formula } from '../../things/formula.ts'
import { inMillimetres, type Length, longest, times } from '../../units/length.ts'

const MM3_PER_LITRE = 1e6
const DEPTHS = [beadDepth, backedDepth]

/**
 * Section of the bead at one gap, mm²: gap × depth, and never less than the small fillet of the tooled corner,
 * so a wider gap never takes less. `max(fillet² / 2, gap × depth)`.
 */
export const beadSection = formula(
  {
    id: 'joints.bead-section',
    plain: 'the larger of fillet leg squared over 2, and gap × bead depth, in mm²',
    source: 'common practice, no source',
    gives: 'number',
    from: { depth: DEPTHS, fillet: { id: 'bead.fillet' } },
  },
  (given: { readonly gap: Length; readonly depth: Length; readonly fillet: Length }): number =>
    Math.max(inMillimetres(given.fillet) ** 2 / 2, inMillimetres(given.gap) * inMillimetres(given.depth)),
)

/** Litres of the first pass: length × mean of both end sections × (1 + waste). Length in nm, sections in mm². */
export const beadVolume = formula(
  {
    id: 'joints.bead-volume',
    plain: 'length × (section at one end + section at the other) / 2 × (1 + waste)',
    source: 'geometry',
    gives: 'litres',
    from: { sectionOne: beadSection, sectionOther: beadSection, waste: { id: 'caulk.waste' } },
  },
  (given: {
    readonly length: Length
    readonly sectionOne: number
    readonly sectionOther: number
    readonly waste: number
  }): number =>
    ((inMillimetres(given.length) * (given.sectionOne + given.sectionOther)) / 2 / MM3_PER_LITRE) * (1 + given.waste),
)

/**
 * Passes until the dried surface is hollow by no more than can be seen: the least n ≥ 1 with depth × shrinkageⁿ ≤ visible.
 * Compared exactly (≤, whole numbers): shrinkage is taken to four decimals. Undefined when the bead never stays flush.
 */
export const passesFor = formula(
  {
    id: 'joints.passes',
    plain: 'least whole n from 1 with depth × shrinkage to the power n no more than visible',
    source: 'ASTM C834, limit of volume shrinkage (from memory)',
    gives: 'count',
    from: { depth: DEPTHS, visible: { id: 'bead.visible' }, shrinkage: { id: 'caulk.shrinkage' } },
  },
  (given: { readonly depth: Length; readonly visible: Length; readonly shrinkage: number }): number | undefined => {
    const part = BigInt(Math.round(given.shrinkage * Number(PARTS)))
    let hollow = BigInt(given.depth)
    let visible = BigInt(given.visible)
    for (let passes = 1; passes <= MOST_TRIED; passes += 1) {
      hollow *= part
      visible *= PARTS
      if (hollow <= visible) return passes
    }
    return undefined
  },
)
const PARTS = 10_000n
const MOST_TRIED = 20

/** Caulk of all passes, as a multiple of the first: 1 + s + … + s^(n−1): each pass only fills what the last one sank. */
export const allPasses = formula(
  {
    id: 'joints.all-passes',
    plain: '1 + shrinkage + shrinkage² + … once for each pass',
    source: 'geometry',
    gives: 'number',
    from: { passes: passesFor, shrinkage: { id: 'caulk.shrinkage' } },
  },
  ({ passes, shrinkage }: { readonly passes: number; readonly shrinkage: number }): number =>
    Array.from({ length: passes }, (_, pass) => shrinkage ** pass).reduce((total, share) => total + share, 0),
)

/** Litres one joint takes, waste included: first pass × all passes. */
export const jointCaulk = formula(
  {
    id: 'joints.caulk',
    plain: 'caulk of the first pass × all passes',
    source: 'geometry',
    gives: 'litres',
    from: { firstPass: beadVolume },
  },
  (given: { readonly firstPass: number; readonly allPasses: number }): number => given.firstPass * given.allPasses,
)

/** Thinnest backer rod that holds in a gap: 25 % over its wider end. */
export const rodDiameter = formula(
  {
    id: 'joints.rod',
    plain: 'the wider gap × 1.25',
    source: 'ASTM C1193 practice: 25 % wider than the joint (from memory)',
    from: { over: { id: 'caulk.rod-over' } },
  },
  (given: { readonly gap1: Length; readonly gap2: Length; readonly over: number }): Length =>
    times(longest(given.gap1, given.gap2), given.over),
)
