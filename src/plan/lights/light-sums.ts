import { formula } from '../../things/formula.ts'
import { inMetres, type Length, less, over, sum, times } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'

const PRACTICE = 'common practice, no source'

/** Length of a strip and its groove: the place it lies in, less what stays free at each end, down to the cut step. */
export const stripLength = formula<{ room: Length; endClear: Length; cut: CutStep }, Length>(
  {
    id: 'light.strip-length',
    plain: 'free length − 2 × free end, down to the cut step',
    source: PRACTICE,
    from: { endClear: { id: 'lights.end-clear' } },
  },
  ({ room, endClear, cut }) => cut.down(less(room, times(endClear, 2))),
)

/** Centre line of the profile from the front edge of its panel. */
export const lineFromFront = formula<
  { place: 'front' | 'back'; panelDepth: Length; edgeLeast: Length; profileWidth: Length; cut: CutStep },
  Length
>(
  {
    id: 'light.from-front',
    plain: 'front: least edge + half the profile; back: depth of the panel less that; near to the cut step',
    source: PRACTICE,
    from: { edgeLeast: { id: 'lights.edge-least' }, profileWidth: { id: 'light.profile-width' } },
  },
  ({ place, panelDepth, edgeLeast, profileWidth, cut }) => {
    const fromEdge = sum(edgeLeast, over(profileWidth, 2))
    return cut.near(place === 'front' ? fromEdge : less(panelDepth, fromEdge))
  },
)

/** Wood that stays over a groove. */
export const woodLeft = formula<{ panelThickness: Length; profileDepth: Length }, Length>(
  { id: 'light.wood-left', plain: 'thickness of the panel − depth of the groove', source: 'geometry' },
  ({ panelThickness, profileDepth }) => less(panelThickness, profileDepth),
)

/** Where the cable comes out of a floating shelf: right of the side cleat and the first rib, with wood between. */
export const cableFromEnd = formula<
  { cleatDepth: Length; ribInset: Length; ribThickness: Length; holeEdge: Length; hole: Length; cut: CutStep },
  Length
>(
  {
    id: 'light.cable-from-end',
    plain: 'side cleat + set-in of the first rib + its thickness + wood at a hole + half the hole, up to the cut step',
    source: PRACTICE,
    from: { holeEdge: { id: 'lights.hole-edge' }, hole: { id: 'lights.hole' } },
  },
  ({ cleatDepth, ribInset, ribThickness, holeEdge, hole, cut }) =>
    cut.up(sum(cleatDepth, ribInset, ribThickness, holeEdge, over(hole, 2))),
)

/** Watts of some lights: their metres × watts a metre. */
export const lightLoad = formula<{ strips: readonly Length[]; lightWatts: number }, number>(
  {
    id: 'light.load',
    plain: 'metres of strip × watts a metre',
    source: 'arithmetic',
    gives: 'number',
    units: { lightWatts: 'number' },
  },
  ({ strips, lightWatts }) => strips.reduce((watts, l) => watts + inMetres(l) * lightWatts, 0),
)

/** What a driver must be named for: the load over the share of its name it runs at for good. */
export const driverNeed = formula<{ load: number; driverShare: number }, number>(
  {
    id: 'light.driver-need',
    plain: 'load ÷ share of its name a driver runs at for good',
    source: PRACTICE,
    gives: 'number',
    units: { load: 'number', driverShare: 'number' },
  },
  ({ load, driverShare }) => load / driverShare,
)

/** Cable of one light, metres: out of the panel, down to the driver, along the run; with spare. */
export const cableLength = formula<{ outward: Length; downward: Length; sideways: Length; cableSpare: number }, number>(
  {
    id: 'light.cable',
    plain: '(depth + fall + way along the run) × (1 + spare), in metres',
    source: PRACTICE,
    gives: 'number',
    from: { cableSpare: { id: 'lights.cable-spare' } },
    units: { cableSpare: 'number' },
  },
  ({ outward, downward, sideways, cableSpare }) => inMetres(sum(outward, downward, sideways)) * (1 + cableSpare),
)
