import type { Figures } from '../../figures/figures.ts'
import { HINGE_ARMS, type HingeArm } from '../../figures/hardware.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, over, sum, times } from '../../units/length.ts'
import type { Mass } from '../../units/mass.ts'
import type { CutStep } from '../../units/round.ts'

const PRACTICE = 'common practice, no source'

/** Hinges are put on from two up to five. */
const MOST = 5
const LIMITS = { upTo2: '2', upTo3: '3', upTo4: '4', upTo5: '5' } as const
type Limits<T extends number> = { readonly [K in keyof typeof LIMITS]: T }

/** The fewest of two to five whose limit is not passed; undefined beyond the last. */
const fewest = (value: number, { upTo2, upTo3, upTo4, upTo5 }: Limits<number>): number | undefined => {
  const at = [upTo2, upTo3, upTo4, upTo5].findIndex((limit) => value <= limit)
  return at < 0 ? undefined : at + 2
}

const limitsFrom = (of: 'height' | 'mass') => ({
  upTo2: { id: `hinge.${of}-2` },
  upTo3: { id: `hinge.${of}-3` },
  upTo4: { id: `hinge.${of}-4` },
  upTo5: { id: `hinge.${of}-5` },
})

/** Hinges by the height of the leaf; undefined for one that is too high. */
export const hingesByHeight = formula<Limits<Length> & { leafHeight: Length }, number | undefined>(
  {
    id: 'fronts.hinges-by-height',
    plain: 'two, three, four or five: the fewest whose tallest leaf is not passed',
    source: PRACTICE,
    gives: 'count',
    from: { ...limitsFrom('height'), leafHeight: [{ id: 'fronts.leaf-height' }, { id: 'fronts.face-height' }] },
  },
  ({ leafHeight, ...limits }) => fewest(leafHeight, limits),
)

/** Hinges by the mass of the leaf, kg; undefined for one that is too heavy. */
export const hingesByMass = formula<Limits<number> & { leafMass: Mass }, number | undefined>(
  {
    id: 'fronts.hinges-by-mass',
    plain: 'two, three, four or five: the fewest whose heaviest leaf is not passed',
    source: PRACTICE,
    gives: 'count',
    from: limitsFrom('mass'),
    units: { upTo2: 'mass', upTo3: 'mass', upTo4: 'mass', upTo5: 'mass', leafMass: 'mass' },
  },
  ({ leafMass, ...limits }) => fewest(leafMass, limits),
)

/** The larger count; one more on a wide leaf. */
const largerCount = formula<
  { hingesByHeight: number; hingesByMass: number; leafWidth: Length; widthMore: Length },
  number
>(
  {
    id: 'fronts.hinges',
    plain:
      'the larger of the count by height and the count by mass; one more on a leaf wider than the width for one more',
    source: PRACTICE,
    gives: 'count',
    units: { hingesByHeight: 'count', hingesByMass: 'count' },
  },
  ({ hingesByHeight: high, hingesByMass: heavy, leafWidth, widthMore }) =>
    Math.max(high, heavy) + (leafWidth > widthMore ? 1 : 0),
)

/** Hinges of one leaf: the larger count by height and by mass, one more on a wide leaf. Undefined beyond the tables. */
export function hingeCount({
  height,
  width,
  mass,
  figures,
}: {
  readonly height: Length
  readonly width: Length
  readonly mass: Mass
  readonly figures: Figures
}): number | undefined {
  const each = <T>(of: (count: string) => T) => ({ upTo2: of('2'), upTo3: of('3'), upTo4: of('4'), upTo5: of('5') })
  const high = hingesByHeight({ leafHeight: height, ...each((n) => figures.length(`hinge.height-${n}`)) })
  const heavy = hingesByMass({ leafMass: mass, ...each((n) => figures.number(`hinge.mass-${n}`)) })
  if (high === undefined || heavy === undefined) return undefined
  const widthMore = figures.length('hinge.width-more')
  return largerCount({ hingesByHeight: high, hingesByMass: heavy, leafWidth: width, widthMore })
}

/** Hinges put on a leaf the tables do not reach; the stop that says so is raised beside it. */
export const mostHinges = MOST

/** Cup centres from the leaf's lower end: evenly between the two end ones, to the nearest step. */
export const cupCentres = formula<
  { leafHeight: Length; hinges: number; cupEnd: Length; cut: CutStep },
  readonly Length[]
>(
  {
    id: 'fronts.cups',
    plain: 'end distance + i · (leaf height − 2 · end distance) ÷ (hinges − 1), near',
    source: PRACTICE,
    from: { leafHeight: [{ id: 'fronts.leaf-height' }, { id: 'fronts.face-height' }] },
    units: { hinges: 'count' },
  },
  ({ leafHeight, hinges, cupEnd, cut }) => {
    const free = less(leafHeight, times(cupEnd, 2))
    return Array.from({ length: hinges }, (_, i) => cut.near(sum(cupEnd, over(times(free, i), hinges - 1))))
  },
)

/** A fixed shelf, divider or rail behind a leaf, from the leaf's lower end. */
export interface Behind {
  readonly from: Length
  readonly to: Length
}

/** A cup moved toward the middle of the leaf until its centre is clear of what is fixed behind it. */
export const clearCup = formula<
  { cup: Length; middle: Length; behindFrom: Length; behindTo: Length; cupClear: Length; cut: CutStep },
  Length
>(
  {
    id: 'fronts.cup-clear',
    plain: 'below the middle: upper face of what is fixed + clearance, up; above it: lower face − clearance, down',
    source: PRACTICE,
  },
  ({ cup, middle, behindFrom, behindTo, cupClear, cut }) =>
    cup <= middle ? cut.up(sum(behindTo, cupClear)) : cut.down(less(behindFrom, cupClear)),
)

/** The cups slid clear, each toward the middle of the leaf, of every fixed shelf, divider and rail behind it. */
export function cupsClearOf(
  cups: readonly Length[],
  behind: readonly Behind[],
  given: { readonly height: Length; readonly cupClear: Length; readonly cut: CutStep },
): readonly Length[] {
  const middle = over(given.height, 2)
  const near = (cup: Length, { from, to }: Behind) => longest(less(from, cup), less(cup, to)) < given.cupClear
  const slid = (cup: Length): Length =>
    [...behind]
      .sort((a, b) => (cup <= middle ? a.from - b.from : b.from - a.from))
      .reduce(
        (at, piece) =>
          near(at, piece) ? clearCup({ cup: at, middle, behindFrom: piece.from, behindTo: piece.to, ...given }) : at,
        cup,
      )
  return cups.map(slid)
}

/** How far a leaf laps over the box side it hangs on: what a hinge is ordered for. */
export const hingeOverlay = formula<{ carcassThickness: Length; margin: Length }, Length>(
  {
    id: 'fronts.overlay',
    plain: 'thickness of the box side − margin of the leaf at that side',
    source: 'geometry',
    from: { margin: [{ id: 'fronts.joint-margin' }, { id: 'door.reveal-outer' }, { id: 'door.gap' }] },
  },
  ({ carcassThickness, margin }) => less(carcassThickness, margin),
)

/** The arm made for an overlay; undefined when no hinge of the list laps so far or so little. */
export const armFor = (overlay: Length, figures: Figures): HingeArm | undefined =>
  HINGE_ARMS.find(
    ({ id }) => overlay >= figures.length(`hinge-arm.${id}.least`) && overlay <= figures.length(`hinge-arm.${id}.most`),
  )
