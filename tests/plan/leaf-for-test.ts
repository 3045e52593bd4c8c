import type { Box } from '../../src/plan/boxes/boxes.ts'
import type { Leaf } from '../../src/plan/fronts/fronts.ts'
import { millimetres, ZERO } from '../../src/units/length.ts'
import { kilograms } from '../../src/units/mass.ts'

/** One box of 600 × 760 × 350 mm at the left end of an alcove, with studs where the test says. */
export function boxOf(given: Partial<Box> & { readonly studs?: readonly number[] } = {}): Box {
  const { studs = [], ...rest } = given
  const bay = { id: 'a', kind: 'alcove', letter: 'L', name: 'left alcove', index: 0 } as const
  // Only what the steps under test read of a run and its wall.
  const wall = { kind: 'alcove', bay, originX: ZERO, fixing: { kind: 'studs', centres: studs.map(millimetres) } }
  return {
    run: { bay, wall, kind: 'base', z0: millimetres(100) } as unknown as Box['run'],
    number: 1,
    mark: 'L1',
    id: 'a/box-1',
    x: millimetres(25),
    z: millimetres(100),
    width: millimetres(600),
    height: millimetres(760),
    heightFrom: { id: 'boxHeight' },
    depth: millimetres(350),
    insideWidth: millimetres(564),
    insideDepth: millimetres(344),
    dividers: [],
    compartments: [millimetres(564)],
    fixedShelves: [],
    openings: [{ from: millimetres(18), to: millimetres(742) }],
    loose: [1],
    looseShelves: 1,
    backGap: millimetres(6),
    waitsFor: [],
    ...rest,
  }
}

/** A leaf of 597 × 755.5 mm on that box, hinged at the left. */
export const leafOf = (given: Partial<Leaf> = {}): Leaf => ({
  box: boxOf(),
  mark: 'L1-D1',
  id: 'a/box-1/door-1',
  x: millimetres(26.5),
  z: millimetres(101.5),
  width: millimetres(597),
  height: millimetres(755.5),
  thickness: millimetres(18),
  hingeSide: 'left',
  hinges: 2,
  cups: [millimetres(100), millimetres(655.5)],
  cupFromEdge: millimetres(22.5),
  plates: [millimetres(101.5), millimetres(657)],
  overlay: millimetres(16.5),
  arm: 'straight arm',
  handleHoles: [{ fromHandleEdge: millimetres(30), fromTop: millimetres(75) }],
  mass: kilograms(6.1),
  waitsFor: [],
  from: { width: { id: 'fronts.leaf-width' }, height: { id: 'fronts.face-height' } },
  ...given,
})
