import { formula } from '../../things/formula.ts'
import { type Length, less, over, shortest, sum, times, ZERO } from '../../units/length.ts'
import type { FrontKind, LeafPiece, LeafSize } from './contract.ts'
import { FRONT_HEIGHT, FRONT_WIDTH, onStile, STILE } from './front-sizes.ts'

/** Stiles run through; rails and panel sit with tongues in the stiles' groove, the panel with a little play. */
export const framedFront = {
  id: 'framed',
  says: 'framed: stiles, rails and a panel',
  door: 'framed door',
  rate: 'leaf-framed',
  asksFrame: true,
  pieces: (leaf) => [
    stile(leaf, 'left', ZERO),
    stile(leaf, 'right', less(leaf.width, leaf.frame)),
    rail(leaf, 'lower', ZERO),
    rail(leaf, 'upper', less(leaf.height, leaf.frame)),
    panel(leaf),
  ],
  field: (leaf) => shortest(widthOfPanel(leaf), heightOfPanel(leaf)),
  handleIn: ({ frame }) => onStile({ stile: frame }),
} as const satisfies FrontKind

/** A rail with a tongue at each end. */
export const railLength = formula<{ leafWidth: Length; stile: Length; tongue: Length }, Length>(
  {
    id: 'framed.rail',
    plain: 'leaf width − 2 · stile + 2 · tongue',
    source: 'geometry',
    from: { leafWidth: FRONT_WIDTH, stile: STILE },
  },
  ({ leafWidth, stile: frame, tongue }) => sum(less(leafWidth, times(frame, 2)), times(tongue, 2)),
)

interface InFrame {
  readonly stile: Length
  readonly tongue: Length
  readonly panelPlay: Length
}

/** The panel across, with its play in both grooves. */
export const panelWidth = formula<InFrame & { leafWidth: Length }, Length>(
  {
    id: 'framed.panel-width',
    plain: 'leaf width − 2 · stile + 2 · tongue − 2 · play',
    source: 'geometry',
    from: { leafWidth: FRONT_WIDTH, stile: STILE },
  },
  ({ leafWidth, ...frame }) => inFrame(leafWidth, frame),
)

/** The panel's height, with its play in both grooves. */
export const panelHeight = formula<InFrame & { leafHeight: Length }, Length>(
  {
    id: 'framed.panel-height',
    plain: 'leaf height − 2 · rail + 2 · tongue − 2 · play',
    source: 'geometry',
    from: { leafHeight: FRONT_HEIGHT, stile: STILE },
  },
  ({ leafHeight, ...frame }) => inFrame(leafHeight, frame),
)

const inFrame = (whole: Length, { stile: frame, tongue, panelPlay }: InFrame): Length =>
  less(sum(less(whole, times(frame, 2)), times(tongue, 2)), times(panelPlay, 2))

/** A stile is cut longer and trimmed after glue-up. */
export const stileRough = formula<{ leafHeight: Length; stileRough: Length }, Length>(
  {
    id: 'framed.stile-rough-length',
    plain: 'leaf height + what is left long',
    source: 'common practice, no source',
    from: { leafHeight: FRONT_HEIGHT },
  },
  ({ leafHeight, stileRough: more }) => sum(leafHeight, more),
)

const frameOf = ({ frame, figures }: LeafSize): InFrame => ({
  stile: frame,
  tongue: figures.length('door.tongue'),
  panelPlay: figures.length('door.panel-play'),
})
const widthOfPanel = (leaf: LeafSize): Length => panelWidth({ leafWidth: leaf.width, ...frameOf(leaf) })
const heightOfPanel = (leaf: LeafSize): Length => panelHeight({ leafHeight: leaf.height, ...frameOf(leaf) })

const STILE_QUESTION = { id: 'stileWidth' }
const THICKNESS = { id: 'frontThickness' }

function stile(leaf: LeafSize, side: 'left' | 'right', x: Length): LeafPiece {
  const leftLong = leaf.figures.length('door.stile-rough')
  return {
    id: `stile-${side}`,
    piece: 'stile',
    carries: `${side} edge`,
    length: leaf.height,
    width: leaf.frame,
    thickness: leaf.thickness,
    roughLength: stileRough({ leafHeight: leaf.height, stileRough: leftLong }),
    leftLong,
    details: [{ says: 'groove on the inner edge, deep:', length: leaf.figures.length('door.tongue') }],
    at: { x, y: ZERO, z: ZERO },
    lies: 'upright',
    from: { length: leaf.from.height, width: STILE_QUESTION, thickness: THICKNESS, roughLength: stileRough },
  }
}

function rail(leaf: LeafSize, where: 'lower' | 'upper', z: Length): LeafPiece {
  const tongue = leaf.figures.length('door.tongue')
  const length = railLength({ leafWidth: leaf.width, stile: leaf.frame, tongue })
  return {
    id: `rail-${where}`,
    piece: 'rail',
    carries: 'nothing',
    length,
    width: leaf.frame,
    thickness: leaf.thickness,
    roughLength: length,
    leftLong: ZERO,
    details: [{ says: 'tongue at both ends, groove on the inner edge, long and deep:', length: tongue }],
    at: { x: less(leaf.frame, tongue), y: ZERO, z },
    lies: 'across',
    from: { length: railLength, width: STILE_QUESTION, thickness: THICKNESS },
  }
}

function panel(leaf: LeafSize): LeafPiece {
  const thickness = leaf.figures.length('door.panel')
  const { tongue, panelPlay } = frameOf(leaf)
  const inset = less(leaf.frame, less(tongue, panelPlay))
  const length = heightOfPanel(leaf)
  return {
    id: 'panel',
    piece: 'panel',
    carries: 'nothing',
    length,
    width: widthOfPanel(leaf),
    thickness,
    roughLength: length,
    leftLong: ZERO,
    details: [{ says: 'loose in its groove, play at each edge:', length: panelPlay }],
    at: { x: inset, y: over(less(leaf.thickness, thickness), 2), z: inset },
    lies: 'upright',
    from: { length: panelHeight, width: panelWidth, thickness: { id: 'door.panel' } },
  }
}
