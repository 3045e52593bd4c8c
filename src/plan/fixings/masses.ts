import { formula, within } from '../../things/formula.ts'
import type { Part, PartId } from '../../things/part.ts'
import { inMetres } from '../../units/length.ts'
import { kilograms, type Mass } from '../../units/mass.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { parseMark, printMark } from '../marks.ts'
import { materialOf } from '../materials.ts'

/** Mass of one piece, kg: finished length × width × thickness × density; the larger end of a taper. */
export const pieceMass = formula(
  {
    id: 'fixings.piece-mass',
    plain: 'length × width × thickness × density',
    source: 'geometry',
    gives: 'mass',
    from: { density: [{ id: 'density.mdf' }, { id: 'density.plywood' }, { id: 'density.softwood' }] },
    units: { length: 'length', width: 'length', thickness: 'length' },
  },
  (given: Pick<Part, 'length' | 'width' | 'thickness'> & { readonly density: number }): Mass =>
    kilograms(inMetres(given.length) * inMetres(given.width) * inMetres(given.thickness) * given.density),
)

/** Mass of a part, all its pieces together, kg. */
const partMass = formula<{ pieceMass: Mass; quantity: number }, Mass>(
  {
    id: 'fixings.mass',
    plain: 'mass of one piece × pieces',
    source: 'geometry',
    gives: 'mass',
    units: { quantity: 'count' },
  },
  ({ pieceMass: each, quantity }) => kilograms(each * quantity),
)

/** Mass of each part, all its pieces together. */
export const partMasses = (
  { figures }: Pick<PlanContext, 'figures'>,
  parts: readonly Part[],
): ReadonlyMap<PartId, Mass> =>
  new Map(
    parts.map(({ id, length, width, thickness, quantity, material }) => {
      const mass = within(id, () => {
        const { density } = materialOf(material, figures)
        return partMass({ pieceMass: pieceMass({ length, width, thickness, density }), quantity })
      })
      return [id, mass]
    }),
  )

/** Mass of a box, kg. */
const boxMass = formula<{ parts: readonly Mass[] }, Mass>(
  {
    id: 'fixings.box-mass',
    plain: 'sum of its panels, nailers and loose shelves',
    source: 'geometry',
    gives: 'mass',
    from: { parts: partMass },
  },
  ({ parts }) => kilograms(parts.reduce((total, mass) => total + mass, 0)),
)

/** Mass of each box by mark: its panels, nailers and loose shelves, without leaves and hardware. */
export const boxMasses = (
  boxes: readonly Box[],
  parts: readonly Part[],
  masses: ReadonlyMap<PartId, Mass>,
): ReadonlyMap<string, Mass> =>
  new Map(
    boxes.map((box) => {
      const own = parts.filter((part) => ofBox(part, box)).map((part) => masses.get(part.id) ?? kilograms(0))
      return [box.mark, within(box.id, () => boxMass({ parts: own }))]
    }),
  )

/** Whether a part belongs to a box and is no leaf or drawer front of it. */
export function ofBox(part: Part, box: Pick<Box, 'mark'>): boolean {
  const mark = parseMark(part.mark)
  if (mark?.box === undefined || mark.role === 'D' || mark.role === 'Y') return false
  return printMark({ bay: mark.bay, box: mark.box }) === box.mark
}
