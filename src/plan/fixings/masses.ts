import { formula } from '../../things/formula.ts'
import type { Part, PartId } from '../../things/part.ts'
import { inMetres } from '../../units/length.ts'
import { kilograms, type Mass } from '../../units/mass.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { parseMark, printMark } from '../marks.ts'
import { materialOf } from '../materials.ts'

/** Mass of one piece, kg: finished length × width × thickness × density; the larger end of a taper. */
export const pieceMass = formula(
  { id: 'fixings.mass', plain: 'length × width × thickness × density', source: 'geometry' },
  (given: Pick<Part, 'length' | 'width' | 'thickness'> & { readonly density: number }): Mass =>
    kilograms(inMetres(given.length) * inMetres(given.width) * inMetres(given.thickness) * given.density),
)

/** Mass of each part, all its pieces together. */
export const partMasses = (
  { figures }: Pick<PlanContext, 'figures'>,
  parts: readonly Part[],
): ReadonlyMap<PartId, Mass> =>
  new Map(
    parts.map(({ id, length, width, thickness, quantity, material }) => {
      const { density } = materialOf(material, figures)
      return [id, kilograms(pieceMass({ length, width, thickness, density }) * quantity)]
    }),
  )

/** Mass of each box by mark: its panels, nailers and loose shelves, without leaves and hardware. */
export const boxMasses = (
  boxes: readonly Box[],
  parts: readonly Part[],
  masses: ReadonlyMap<PartId, Mass>,
): ReadonlyMap<string, Mass> =>
  new Map(
    boxes.map((box) => [
      box.mark,
      kilograms(parts.filter((part) => ofBox(part, box)).reduce((mass, part) => mass + (masses.get(part.id) ?? 0), 0)),
    ]),
  )

/** Whether a part belongs to a box and is no leaf or drawer front of it. */
export function ofBox(part: Part, box: Pick<Box, 'mark'>): boolean {
  const mark = parseMark(part.mark)
  if (mark?.box === undefined || mark.role === 'D' || mark.role === 'Y') return false
  return printMark({ bay: mark.bay, box: mark.box }) === box.mark
}
