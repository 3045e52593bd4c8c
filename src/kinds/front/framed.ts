import { type Length, less, over, shortest, sum, times, ZERO } from '../../units/length.ts'
import type { FrontKind, LeafPiece, LeafSize } from './contract.ts'

/** Stiles run through; rails and panel sit with tongues in the stiles' groove, the panel with a little play. */
export const framedFront = {
  id: 'framed',
  says: 'framed: stiles, rails and a panel',
  pieces: (leaf) => [
    stile(leaf, 'left', ZERO),
    stile(leaf, 'right', less(leaf.width, leaf.frame)),
    rail(leaf, 'lower', ZERO),
    rail(leaf, 'upper', less(leaf.height, leaf.frame)),
    panel(leaf),
  ],
  field: (leaf) => shortest(panelWidth(leaf), panelHeight(leaf)),
  handleIn: ({ frame }) => over(frame, 2),
} as const satisfies FrontKind

const tongues = ({ figures }: LeafSize): Length => times(figures.length('door.tongue'), 2)
const plays = ({ figures }: LeafSize): Length => times(figures.length('door.panel-play'), 2)
const between = (whole: Length, leaf: LeafSize): Length => sum(less(whole, times(leaf.frame, 2)), tongues(leaf))
const panelWidth = (leaf: LeafSize): Length => less(between(leaf.width, leaf), plays(leaf))
const panelHeight = (leaf: LeafSize): Length => less(between(leaf.height, leaf), plays(leaf))

function stile(leaf: LeafSize, side: 'left' | 'right', x: Length): LeafPiece {
  const leftLong = leaf.figures.length('door.stile-rough')
  return {
    id: `stile-${side}`,
    piece: 'stile',
    carries: `${side} edge`,
    length: leaf.height,
    width: leaf.frame,
    thickness: leaf.thickness,
    roughLength: sum(leaf.height, leftLong),
    leftLong,
    details: [{ says: 'groove on the inner edge, deep:', length: leaf.figures.length('door.tongue') }],
    at: { x, y: ZERO, z: ZERO },
    lies: 'upright',
  }
}

function rail(leaf: LeafSize, where: 'lower' | 'upper', z: Length): LeafPiece {
  const tongue = leaf.figures.length('door.tongue')
  const length = between(leaf.width, leaf)
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
  }
}

function panel(leaf: LeafSize): LeafPiece {
  const thickness = leaf.figures.length('door.panel')
  const inset = less(leaf.frame, over(less(tongues(leaf), plays(leaf)), 2))
  const length = panelHeight(leaf)
  return {
    id: 'panel',
    piece: 'panel',
    carries: 'nothing',
    length,
    width: panelWidth(leaf),
    thickness,
    roughLength: length,
    leftLong: ZERO,
    details: [{ says: 'loose in its groove, play at each edge:', length: leaf.figures.length('door.panel-play') }],
    at: { x: inset, y: over(less(leaf.thickness, thickness), 2), z: inset },
    lies: 'upright',
  }
}
