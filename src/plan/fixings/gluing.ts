import { formula, within } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import { areaOf } from '../../units/area.ts'
import { inMillimetres, type Length } from '../../units/length.ts'
import { litres, type Volume } from '../../units/volume.ts'
import type { PlanContext } from '../context.ts'
import { parseMark } from '../marks.ts'
import { along } from './along.ts'
import { countOver, type FixingLine } from './fixing-line.ts'

const MM3_PER_LITRE = 1e6
const GRAMS_PER_KILOGRAM = 1000

/** Litres of construction adhesive: length × beads × section of a bead (mm²). */
export const adhesiveLitres = formula(
  {
    id: 'fixings.adhesive',
    plain: 'length × beads × section of a bead',
    source: 'common practice, no source',
    gives: 'litres',
    units: { length: 'length', beads: 'count', section: 'number' },
  },
  (given: { readonly length: Length; readonly beads: number; readonly section: number }): Volume =>
    litres((inMillimetres(given.length) * given.beads * given.section) / MM3_PER_LITRE),
)

/**
 * Glue of cleats, shelves and mantel. A cleat gets two bonds: one that grabs at once (instant adhesive) and one that
 * carries (construction adhesive), besides its screws.
 */
export function gluing({ figures }: PlanContext, parts: readonly Part[]): readonly FixingLine[] {
  const cleats = parts.filter((part) => parseMark(part.mark)?.role === 'C')
  const bead = (part: Part) =>
    adhesiveLitres({
      length: part.length,
      beads: figures.number('glue.cleat-beads'),
      section: figures.number('glue.bead'),
    })
  const dabs = (part: Part) =>
    along({ length: part.length, end: figures.length('screw.cleat-end'), pitch: figures.length('screw.top-pitch') })
  const count = (id: string, each: (part: Part) => number) =>
    countOver(
      id,
      cleats.map((part) => part.quantity * each(part)),
    )
  const bottle = figures.number('glue.instant-bottle')
  return [
    {
      id: 'adhesive',
      item: 'construction adhesive',
      use: 'shelf cleats: one bead to the wall, two to the shelf',
      count: count('adhesive', bead),
      unit: 'l',
    },
    {
      id: 'instant-glue',
      item: `instant adhesive, bottle of ${bottle} ml`,
      use: 'holds a cleat while it is screwed; carries nothing',
      count: within('instant-glue', () =>
        bottles({ dabs: count('instant-glue', dabs), instantDab: figures.number('glue.instant-dab'), bottle }),
      ),
      unit: 'piece',
    },
    {
      id: 'pva',
      item: 'wood glue',
      use: 'shelf skins on edges and ribs, mantel layers',
      count: within('pva', () =>
        pvaLitres({
          face: countOver('pva', parts.map(gluedFace)),
          perArea: figures.number('glue.pva'),
          density: figures.number('density.pva'),
        }),
      ),
      unit: 'l',
    },
  ]
}

/** Bottles of instant adhesive: a dab at each place. */
const bottles = formula<{ dabs: number; instantDab: number; bottle: number }, number>(
  {
    id: 'fixings.instant-glue',
    plain: 'dabs × glue of one ÷ what a bottle holds, up to a whole one',
    source: 'common practice, no source',
    gives: 'count',
    units: { dabs: 'count', instantDab: 'number', bottle: 'number' },
  },
  ({ dabs, instantDab, bottle }) => Math.ceil((dabs * instantDab) / bottle),
)

/** Litres of wood glue. */
const pvaLitres = formula<{ face: number; perArea: number; density: number }, number>(
  {
    id: 'fixings.wood-glue',
    plain: 'glued face × grams for each m² ÷ 1000 ÷ density',
    source: 'common practice, no source',
    gives: 'litres',
    from: { perArea: { id: 'glue.pva' }, density: { id: 'density.pva' } },
    units: { face: 'area', perArea: 'number', density: 'number' },
  },
  ({ face, perArea, density }) => (perArea * face) / GRAMS_PER_KILOGRAM / density,
)

/** m² of glued face of a part, all pieces: both edges of a shelf's ribs and front edge, one face of each mantel layer. */
function gluedFace({ mark, piece, length, width, thickness, quantity }: Part): number {
  const role = parseMark(mark)?.role
  if (role === 'E' && piece === 'top') return quantity * areaOf(length, width)
  return role === 'H' && piece !== undefined && !piece.includes('skin') ? 2 * quantity * areaOf(length, thickness) : 0
}
