import { type Length, less, over, size, sum, times, ZERO } from '../../units/length.ts'
import { showLengthWithUnit } from '../../units/show-length.ts'
import type { ShelfCleat, ShelfEnd, ShelfKind, ShelfMake, ShelfPiece, ShelfPlace } from './contract.ts'
import { hollowPull, hollowSag } from './hollow-strength.ts'

/** Two skins glued over ribs and cleats, with a front edge that covers them; it slides over the cleats on the walls. */
export const hollowShelf = {
  id: 'hollow',
  says: 'hollow: two skins over ribs, slid onto cleats',
  leastThickness: (make) => sum(times(make.skin, 2), make.figures.length('shelf.void-least')),
  pieces: (place, make) => [...skins(place, make), frontEdge(place, make), ...ends(place, make), ...ribs(place, make)],
  cleats: (place, make) => [
    backCleat(place, make),
    ...SIDES.filter((side) => place[side] === 'wall').map((side) => sideCleat(side, place, make)),
  ],
  cleatTop: (z, make) => less(z, make.skin, over(make.figures.length('shelf.slip'), 2)),
  sag: ({ front, depth }, make, load) => hollowSag({ make, depth, load, front }),
  pull: ({ back, depth }, make, load) => hollowPull({ make, depth, load, back, cleatHeight: cleatHeight(make) }),
} as const satisfies ShelfKind

const SIDES = ['left', 'right'] as const

/** Height of the hollow between the skins. */
const voidOf = (make: ShelfMake): Length => less(make.thickness, times(make.skin, 2))

const cleatHeight = (make: ShelfMake): Length =>
  make.cut.downHalf(less(voidOf(make), make.figures.length('shelf.slip')))

const freeEnds = (place: ShelfPlace): number => SIDES.filter((side) => place[side] === 'free').length

/** A shelf with both ends free is cut to length in the shop: nothing is left long. */
const spareLength = (place: ShelfPlace, make: ShelfMake): Length =>
  freeEnds(place) === SIDES.length ? ZERO : make.figures.length('shelf.long')

function skins(place: ShelfPlace, make: ShelfMake): readonly ShelfPiece[] {
  const covered = times(make.edge, freeEnds(place))
  const width = less(place.depth, make.edge)
  return [
    {
      piece: 'skin',
      name: 'shelf skin',
      quantity: 2,
      backLength: less(place.back, covered),
      frontLength: less(place.front, covered),
      width,
      thickness: make.skin,
      roughLength: make.cut.up(sum(less(place.extent, covered), spareLength(place, make))),
      roughWidth: make.cut.up(sum(width, make.spareDepth)),
      panel: 'skin',
      coatedFaces: 1,
      shows: 'one face',
      details: ['Glue to ribs, front edge and ends over the whole face: the shelf carries nothing without the glue.'],
    },
  ]
}

const frontEdge = (place: ShelfPlace, make: ShelfMake): ShelfPiece => ({
  piece: 'edge',
  name: 'shelf front edge',
  quantity: 1,
  backLength: place.front,
  frontLength: place.front,
  width: make.thickness,
  thickness: make.edge,
  roughLength: make.cut.up(sum(place.front, spareLength(place, make))),
  roughWidth: make.thickness,
  panel: 'edge',
  coatedFaces: 1,
  shows: 'front and both long edges',
  details: ['Covers the edges of both skins.'],
})

function ends(place: ShelfPlace, make: ShelfMake): readonly ShelfPiece[] {
  const length = less(place.depth, make.edge)
  const quantity = freeEnds(place)
  return quantity === 0
    ? []
    : [
        {
          piece: 'end',
          name: 'shelf end',
          quantity,
          backLength: length,
          frontLength: length,
          width: make.thickness,
          thickness: make.edge,
          roughLength: make.cut.up(sum(length, make.spareDepth)),
          roughWidth: make.thickness,
          panel: 'edge',
          coatedFaces: 1,
          shows: 'outer face',
          details: ['Stands behind the front edge and covers the ends of both skins.'],
        },
      ]
}

function ribs(place: ShelfPlace, make: ShelfMake): readonly ShelfPiece[] {
  const { figures, cut } = make
  const quantity = Math.ceil(place.back / figures.length('shelf.rib-pitch')) - 1
  const length = cut.down(less(place.depth, make.edge, figures.length('cleat.depth'), figures.length('cleat.play')))
  if (quantity < 1 || length <= 0) return []
  return [
    {
      piece: 'rib',
      name: 'shelf rib',
      quantity,
      backLength: length,
      frontLength: length,
      width: voidOf(make),
      thickness: make.edge,
      roughLength: length,
      roughWidth: voidOf(make),
      panel: 'edge',
      coatedFaces: 0,
      shows: '',
      details: ['Against the front edge; the space behind them is for the back cleat.', endRibWords(place, make)],
    },
  ]
}

/** A side cleat enters between end and rib, and a slanting end takes its offset besides. */
const endRibWords = (place: ShelfPlace, { figures }: ShelfMake): string => {
  const slant = size(less(place.extent, place.back))
  const inset = sum(figures.length('cleat.depth'), figures.length('shelf.rib-end'), slant)
  return `The outermost ribs stand ${showLengthWithUnit(inset, figures.units)} or more in from the ends.`
}

/** Room a cleat leaves at the end of the back cleat: a side cleat with its play, or the end piece with its play. */
const roomAt = (end: ShelfEnd, make: ShelfMake): Length =>
  sum(end === 'wall' ? make.figures.length('cleat.depth') : make.edge, make.figures.length('cleat.play'))

const backCleat = (place: ShelfPlace, make: ShelfMake): ShelfCleat => ({
  at: 'back',
  length: make.cut.down(less(place.back, roomAt(place.left, make), roomAt(place.right, make))),
  height: cleatHeight(make),
  depth: make.figures.length('cleat.depth'),
})

const sideCleat = (at: 'left' | 'right', place: ShelfPlace, make: ShelfMake): ShelfCleat => ({
  at,
  length: make.cut.down(less(place.depth, make.edge, make.figures.length('cleat.play'))),
  height: cleatHeight(make),
  depth: make.figures.length('cleat.depth'),
})
