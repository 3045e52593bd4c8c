import { type Length, less, over, sum, times, ZERO } from '../../units/length.ts'
import { showLengthWithUnit } from '../../units/show-length.ts'
import type { ShelfCleat, ShelfEnd, ShelfKind, ShelfMake, ShelfPiece, ShelfPlace } from './contract.ts'
import {
  backCleatLength,
  cleatHeight,
  cleatRoom,
  cleatTop,
  edgeRoughLength,
  endRibInset,
  ribCount,
  ribLength,
  shelfBehindEdge,
  shelfRoughDepth,
  shelfVoid,
  sideCleatLength,
  skinLength,
  skinRoughLength,
} from './hollow-sizes.ts'
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
  cleatTop: (z, make) =>
    cleatTop({ shelfTop: z, skinThickness: make.skin, shelfSlip: make.figures.length('shelf.slip') }),
  sag: ({ front, depth }, make, load) => hollowSag({ make, depth, load, front }),
  pull: ({ back, depth }, make, load) => hollowPull({ make, depth, load, back, cleatHeight: heightOfCleat(make) }),
} as const satisfies ShelfKind

const SIDES = ['left', 'right'] as const

const voidOf = (make: ShelfMake): Length => shelfVoid({ shelfThickness: make.thickness, skinThickness: make.skin })

const heightOfCleat = (make: ShelfMake): Length =>
  cleatHeight({ shelfVoid: voidOf(make), shelfSlip: make.figures.length('shelf.slip'), cut: make.cut })

const freeEnds = (place: ShelfPlace): number => SIDES.filter((side) => place[side] === 'free').length

/** A shelf with both ends free is cut to length in the shop: nothing is left long. */
const leftLongOf = (place: ShelfPlace, make: ShelfMake): Length =>
  freeEnds(place) === SIDES.length ? ZERO : make.figures.length('shelf.long')

const QUESTION = {
  shelfThickness: { id: 'shelfThickness' },
  skinThickness: { id: 'skinThickness' },
  edgeThickness: { id: 'edgeThickness' },
} as const

function skins(place: ShelfPlace, make: ShelfMake): readonly ShelfPiece[] {
  const free = freeEnds(place)
  const covered = { freeEnds: free, edgeThickness: free === 0 ? ZERO : make.edge }
  const width = behindEdge(place, make)
  return [
    {
      piece: 'skin',
      name: 'shelf skin',
      quantity: 2,
      backLength: skinLength({ bodyLength: place.back, ...covered }),
      frontLength: skinLength({ bodyLength: place.front, ...covered }),
      width,
      thickness: make.skin,
      roughLength: skinRoughLength({
        extent: place.extent,
        ...covered,
        leftLong: leftLongOf(place, make),
        cut: make.cut,
      }),
      roughWidth: roughDepth(width, make),
      panel: 'skin',
      coatedFaces: 1,
      shows: 'one face',
      details: ['Glue to ribs, front edge and ends over the whole face: the shelf carries nothing without the glue.'],
      from: {
        length: skinLength,
        width: shelfBehindEdge,
        thickness: QUESTION.skinThickness,
        roughLength: skinRoughLength,
        roughWidth: shelfRoughDepth,
      },
    },
  ]
}

const behindEdge = (place: ShelfPlace, make: ShelfMake): Length =>
  shelfBehindEdge({ shelfDepth: place.depth, edgeThickness: make.edge })

const roughDepth = (depth: Length, make: ShelfMake): Length =>
  shelfRoughDepth({ behindEdge: depth, spareDepth: make.spareDepth, cut: make.cut })

const frontEdge = (place: ShelfPlace, make: ShelfMake): ShelfPiece => ({
  piece: 'edge',
  name: 'shelf front edge',
  quantity: 1,
  backLength: place.front,
  frontLength: place.front,
  width: make.thickness,
  thickness: make.edge,
  roughLength: edgeRoughLength({ front: place.front, leftLong: leftLongOf(place, make), cut: make.cut }),
  roughWidth: make.thickness,
  panel: 'edge',
  coatedFaces: 1,
  shows: 'front and both long edges',
  details: ['Covers the edges of both skins.'],
  from: {
    length: { id: 'body.length' },
    width: QUESTION.shelfThickness,
    thickness: QUESTION.edgeThickness,
    roughLength: edgeRoughLength,
  },
})

function ends(place: ShelfPlace, make: ShelfMake): readonly ShelfPiece[] {
  const quantity = freeEnds(place)
  if (quantity === 0) return []
  const length = behindEdge(place, make)
  return [
    {
      piece: 'end',
      name: 'shelf end',
      quantity,
      backLength: length,
      frontLength: length,
      width: make.thickness,
      thickness: make.edge,
      roughLength: roughDepth(length, make),
      roughWidth: make.thickness,
      panel: 'edge',
      coatedFaces: 1,
      shows: 'outer face',
      details: ['Stands behind the front edge and covers the ends of both skins.'],
      from: {
        length: shelfBehindEdge,
        width: QUESTION.shelfThickness,
        thickness: QUESTION.edgeThickness,
        roughLength: shelfRoughDepth,
      },
    },
  ]
}

function ribs(place: ShelfPlace, make: ShelfMake): readonly ShelfPiece[] {
  const { figures, cut } = make
  const quantity = ribCount({ back: place.back, ribPitch: figures.length('shelf.rib-pitch') })
  const length = ribLength({
    shelfDepth: place.depth,
    edgeThickness: make.edge,
    cleatDepth: figures.length('cleat.depth'),
    cleatPlay: figures.length('cleat.play'),
    cut,
  })
  if (quantity < 1 || length <= 0) return []
  const width = voidOf(make)
  return [
    {
      piece: 'rib',
      name: 'shelf rib',
      quantity,
      backLength: length,
      frontLength: length,
      width,
      thickness: make.edge,
      roughLength: length,
      roughWidth: width,
      panel: 'edge',
      coatedFaces: 0,
      shows: '',
      details: ['Against the front edge; the space behind them is for the back cleat.', endRibWords(place, make)],
      from: { length: ribLength, width: shelfVoid, thickness: QUESTION.edgeThickness },
    },
  ]
}

/** A side cleat enters between end and rib, and a slanting end takes its offset besides. */
const endRibWords = (place: ShelfPlace, { figures }: ShelfMake): string => {
  const inset = endRibInset({
    cleatDepth: figures.length('cleat.depth'),
    ribEnd: figures.length('shelf.rib-end'),
    slant: place.slant,
  })
  return `The outermost ribs stand ${showLengthWithUnit(inset, figures.units)} or more in from the ends.`
}

const roomAt = (end: ShelfEnd, make: ShelfMake): Length =>
  cleatRoom({
    standing: end === 'wall' ? make.figures.length('cleat.depth') : make.edge,
    cleatPlay: make.figures.length('cleat.play'),
  })

/** It stands between what is at the two ends; what rounding left over is shared by them. */
function backCleat(place: ShelfPlace, make: ShelfMake): ShelfCleat {
  const [roomLeft, roomRight] = [roomAt(place.left, make), roomAt(place.right, make)]
  const length = backCleatLength({ back: place.back, roomLeft, roomRight, cut: make.cut })
  return {
    at: 'back',
    inset: sum(roomLeft, over(less(place.back, roomLeft, roomRight, length), 2)),
    length,
    height: heightOfCleat(make),
    depth: make.figures.length('cleat.depth'),
    from: { length: backCleatLength, ...ACROSS_A_CLEAT },
  }
}

const sideCleat = (at: 'left' | 'right', place: ShelfPlace, make: ShelfMake): ShelfCleat => ({
  at,
  inset: at === 'left' ? ZERO : less(place.back, make.figures.length('cleat.depth')),
  length: sideCleatLength({
    shelfDepth: place.depth,
    edgeThickness: make.edge,
    cleatPlay: make.figures.length('cleat.play'),
    cut: make.cut,
  }),
  height: heightOfCleat(make),
  depth: make.figures.length('cleat.depth'),
  from: { length: sideCleatLength, ...ACROSS_A_CLEAT },
})

const ACROSS_A_CLEAT = { width: cleatHeight, thickness: { id: 'cleat.depth' } } as const
