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

/**
 * What a hollow shelf bends for good between its side cleats: its front half, a strip d/2 deep, carries half the load.
 * I = 2[b·t³/12 + b·t·((T − t)/2)²] + e·T³/12 with b = d/2 − e; w = (load + own)·d/2; δ = 5·w·L⁴/(384·E·I)·(1 + creep).
 * Holds only while skins, ribs and front edge are glued to one another. Skins t, front edge e, shelf T thick.
 */
export const hollowSag = formula(
  {
    id: 'shelf.sag',
    plain: '5 · w · L⁴ / (384 · E · I) · (1 + creep), front half of the shelf',
    source: 'Wood Handbook, table 9-1; creep EN 1995-1-1, table 3.2',
  },
  (on: Loaded & { readonly front: Length }): Length => {
    const { skin, edge, thickness, figures } = on.make
    const half = inMetres(on.depth) / 2
    const strip = Math.max(0, half - inMetres(edge))
    const span = inMetres(on.front)
    const first = beamDeflection({
      bending: 'uniform, simple ends',
      totalLoad: (on.load + ownWeight(on)) * half * span,
      span,
      stiffness: figures.number('stiffness.mdf') * PASCAL_PER_NEWTON_PER_SQUARE_MILLIMETRE,
      secondMoment:
        gluedSkinsMoment(strip, inMetres(skin), inMetres(thickness)) +
        rectangleMoment(inMetres(edge), inMetres(thickness)),
    })
    return nanometres(Math.round(withCreep(first, figures.number('creep.mdf')) * NANOMETRES_PER_METRE))
  },
)

/**
 * Pull on the back cleat's screws, N, all together, when an end is free and the shelf hangs on its back:
 * w·L·d²/2 over half the cleat's height (the screws stand at mid-height, the lower edge bears).
 */
export const hollowPull = formula(
  { id: 'shelf.pull', plain: 'w · L · d² / 2 / (cleat height / 2)', source: 'statics of a lever on its lower edge' },
  (on: Loaded & { readonly back: Length; readonly cleatHeight: Length }): number =>
    ((on.load + ownWeight(on)) * inMetres(on.back) * inMetres(on.depth) ** 2) / 2 / (inMetres(on.cleatHeight) / 2),
)

/** The shelf's own weight spread over its plan, Pa: two skins and the front edge. */
function ownWeight({ make, depth }: Loaded): Pressure {
  const density = make.figures.number('density.mdf')
  const skins = 2 * inMetres(make.skin)
  const edge = (inMetres(make.edge) * inMetres(make.thickness)) / inMetres(depth)
  return (skins + edge) * density * STANDARD_GRAVITY
}
