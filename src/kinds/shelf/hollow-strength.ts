import { formula } from '../../things/formula.ts'
import { inMetres, type Length, nanometres } from '../../units/length.ts'
import { beamDeflection, withCreep } from './beam.ts'
import type { Pressure, ShelfMake } from './contract.ts'
import { gluedSkinsMoment, rectangleMoment } from './second-moment.ts'

const STANDARD_GRAVITY = 9.81
const PASCAL_PER_NEWTON_PER_SQUARE_MILLIMETRE = 1e6
const NANOMETRES_PER_METRE = 1e9

interface Loaded {
  readonly make: ShelfMake
  readonly depth: Length
  readonly load: Pressure
}

/** What a hollow shelf bends for good between its side cleats. Holds only while skins, ribs and front edge are glued. */
export const hollowSag = (on: Loaded & { readonly front: Length }): Length => {
  const { skin, edge, thickness, figures } = on.make
  const panel = { skinThickness: skin, edgeThickness: edge, shelfThickness: thickness }
  return shelfSag({
    front: on.front,
    shelfDepth: on.depth,
    onShelf: on.load,
    ownWeight: weighing(on),
    stiffness: figures.number('stiffness.mdf'),
    secondMoment: shelfMoment({ shelfDepth: on.depth, ...panel }),
    creep: figures.number('creep.mdf'),
  })
}

/** Pull on the back cleat's screws, N, all together, when an end is free and the shelf hangs on its back. */
export const hollowPull = (on: Loaded & { readonly back: Length; readonly cleatHeight: Length }): number =>
  shelfPull({
    back: on.back,
    shelfDepth: on.depth,
    onShelf: on.load,
    ownWeight: weighing(on),
    cleatHeight: on.cleatHeight,
  })

const weighing = ({ make, depth }: Loaded): Pressure =>
  shelfOwnWeight({
    skinThickness: make.skin,
    edgeThickness: make.edge,
    shelfThickness: make.thickness,
    shelfDepth: depth,
    density: make.figures.number('density.mdf'),
  })

/** The shelf's own weight spread over its plan, Pa: two skins and the front edge, (2·t + e·T/d)·ρ·9.81. */
const shelfOwnWeight = formula(
  {
    id: 'shelf.own-weight',
    plain: '(2 × skin + edge × shelf thickness / depth) × density × 9.81',
    source: 'statics',
    gives: 'pressure',
    from: { density: { id: 'density.mdf' } },
  },
  (of: Panels & { readonly shelfDepth: Length; readonly density: number }): Pressure => {
    const edge = (inMetres(of.edgeThickness) * inMetres(of.shelfThickness)) / inMetres(of.shelfDepth)
    return (2 * inMetres(of.skinThickness) + edge) * of.density * STANDARD_GRAVITY
  },
)

interface Panels {
  readonly skinThickness: Length
  readonly edgeThickness: Length
  readonly shelfThickness: Length
}

/**
 * Second moment of the front half of the shelf, a strip d/2 deep, m⁴:
 * 2[b·t³/12 + b·t·((T − t)/2)²] + e·T³/12 with b = d/2 − e. Skins t, front edge e, shelf T thick.
 */
const shelfMoment = formula(
  {
    id: 'shelf.second-moment',
    plain: '2 × (b·t³/12 + b·t·((T − t)/2)²) + e·T³/12, b = depth / 2 − e; in m⁴',
    source: 'two glued skins about their middle (statics)',
    gives: 'number',
  },
  (of: Panels & { readonly shelfDepth: Length }): number => {
    const [skin, edge, outer] = [inMetres(of.skinThickness), inMetres(of.edgeThickness), inMetres(of.shelfThickness)]
    const strip = Math.max(0, inMetres(of.shelfDepth) / 2 - edge)
    return gluedSkinsMoment(strip, skin, outer) + rectangleMoment(edge, outer)
  },
)

/** δ = 5·w·L⁴/(384·E·I)·(1 + creep), w = (load + own)·d/2: the front half of the shelf carries half the load. */
const shelfSag = formula(
  {
    id: 'shelf.sag',
    plain: '5 · w · L⁴ / (384 · E · I) · (1 + creep), front half of the shelf',
    source: 'Wood Handbook, table 9-1; creep EN 1995-1-1, table 3.2',
    from: {
      front: { id: 'body.length' },
      onShelf: [{ id: 'load.books' }, { id: 'load.ornaments' }],
      ownWeight: shelfOwnWeight,
      stiffness: { id: 'stiffness.mdf' },
      secondMoment: shelfMoment,
      creep: { id: 'creep.mdf' },
    },
  },
  (of: {
    readonly front: Length
    readonly shelfDepth: Length
    readonly onShelf: Pressure
    readonly ownWeight: Pressure
    readonly stiffness: number
    readonly secondMoment: number
    readonly creep: number
  }): Length => {
    const [span, half] = [inMetres(of.front), inMetres(of.shelfDepth) / 2]
    const first = beamDeflection({
      bending: 'uniform, simple ends',
      totalLoad: (of.onShelf + of.ownWeight) * half * span,
      span,
      stiffness: of.stiffness * PASCAL_PER_NEWTON_PER_SQUARE_MILLIMETRE,
      secondMoment: of.secondMoment,
    })
    return nanometres(Math.round(withCreep(first, of.creep) * NANOMETRES_PER_METRE))
  },
)

/** w·L·d²/2 over half the cleat's height: the screws stand at mid-height, the lower edge bears. */
const shelfPull = formula(
  {
    id: 'shelf.pull',
    plain: 'w · L · d² / 2 / (cleat height / 2)',
    source: 'statics of a lever on its lower edge',
    gives: 'force',
    from: {
      back: { id: 'body.length' },
      onShelf: [{ id: 'load.books' }, { id: 'load.ornaments' }],
      ownWeight: shelfOwnWeight,
    },
  },
  (of: {
    readonly back: Length
    readonly shelfDepth: Length
    readonly onShelf: Pressure
    readonly ownWeight: Pressure
    readonly cleatHeight: Length
  }): number =>
    ((of.onShelf + of.ownWeight) * inMetres(of.back) * inMetres(of.shelfDepth) ** 2) /
    2 /
    (inMetres(of.cleatHeight) / 2),
)
