import { mdf } from '../../src/plan/materials.ts'
import type { Part } from '../../src/things/part.ts'
import { millimetres, ZERO } from '../../src/units/length.ts'

/** A made MDF part in millimetres, with whatever else the test needs. */
export function partOf(given: Partial<Part> & { readonly mm: readonly [number, number, number] }): Part {
  const { mm, ...rest } = given
  const [length, width, thickness] = mm.map(millimetres) as [Part['length'], Part['width'], Part['thickness']]
  return {
    id: 'a/box-1/side-left',
    mark: 'L1-S1',
    name: 'side',
    bay: 'a',
    goesTo: 'left alcove, box 1, left',
    quantity: 1,
    length,
    width,
    thickness,
    roughLength: length,
    roughWidth: width,
    leaveLong: '',
    material: mdf(thickness),
    grain: 'none',
    shows: '',
    details: [],
    cutOuts: [],
    supply: 'made',
    placement: { x: ZERO, y: ZERO, z: ZERO, dx: thickness, dy: width, dz: length },
    waitsFor: [],
    ...rest,
  }
}
