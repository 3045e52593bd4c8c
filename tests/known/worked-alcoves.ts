import {
  backThickness,
  baseboardFate,
  boxHeight,
  carcassThickness,
  counterThickness,
  kick,
} from '../../src/job/chapters/cabinets.ts'
import { frontStyle, frontThickness } from '../../src/job/chapters/hardware.ts'
import {
  edgeThickness,
  shelfCount,
  shelfHeights,
  shelfLoad,
  shelfThickness,
  skinThickness,
} from '../../src/job/chapters/shelves.ts'
import { baseboard, ceiling, floor, returns, squareLeft, studs, wallKind, widths } from '../../src/job/chapters/wall.ts'
import { millimetres as mm, ZERO } from '../../src/units/length.ts'
import { in_, wallOf } from '../plan/run-for-test.ts'

// Worked examples, invented, computed by hand.

/** A: an inch alcove that opens outward. */
export const inchAlcove = wallOf('inch', ['alcove'])
  .put(widths, 'a', [
    { height: in_(4), back: in_(41, 1, 4), front: in_(41, 3, 8), left: ZERO },
    { height: in_(36), back: in_(41), front: in_(41, 1, 8), left: in_(0, 1, 8) },
    { height: in_(84), back: in_(40, 7, 8), front: in_(40, 15, 16), left: in_(0, 1, 4) },
  ])
  .put(returns, 'a', [in_(15, 5, 8), in_(15, 1, 2)])
  .put(ceiling, 'a', [in_(96), in_(96)])
  .put(floor, 'a', [
    { x: ZERO, drop: ZERO },
    { x: in_(41), drop: in_(0, 1, 4) },
  ])
  .put(baseboard, 'a', [in_(5, 1, 4), in_(0, 9, 16)])
  .put(wallKind, 'a', 'studs')
  .put(studs, 'a', [in_(8), in_(24), in_(40)])
  .put(boxHeight, 'job', in_(30))
  .put(carcassThickness, 'job', in_(0, 3, 4))
  .put(backThickness, 'job', in_(0, 1, 4))
  .put(frontThickness, 'job', in_(0, 3, 4))
  .put(frontStyle, 'job', 'slab')
  .put(counterThickness, 'job', in_(1))
  .put(skinThickness, 'job', in_(0, 1, 4))
  .put(edgeThickness, 'job', in_(0, 3, 4))
  .put(shelfLoad, 'job', 'ornaments')
  .put(shelfCount, 'a', 1)
  .put(shelfHeights, 'a', [in_(60)])
  .put(shelfThickness, 'a', in_(1, 1, 2))

/** B: a metric alcove with a narrower mouth, both returns slanting the same way. */
export const metricAlcove = wallOf('metric', ['alcove'])
  .put(widths, 'a', [
    { height: mm(50), back: mm(1204), front: mm(1200), left: ZERO },
    { height: mm(1000), back: mm(1200), front: mm(1196), left: mm(2) },
    { height: mm(2000), back: mm(1194), front: mm(1190), left: mm(5) },
  ])
  .put(squareLeft, 'a', mm(7))
  .put(returns, 'a', [mm(350), mm(352)])
  .put(ceiling, 'a', [mm(2440)])
  .put(boxHeight, 'job', mm(720))
  .put(kick, 'job', mm(100))
  .put(baseboardFate, 'job', 'cut')
  .put(carcassThickness, 'job', mm(18))
  .put(backThickness, 'job', mm(6))
  .put(frontThickness, 'job', mm(18))
  .put(counterThickness, 'job', mm(25))
  .put(shelfCount, 'a', 1)
  .put(shelfHeights, 'a', [mm(1250)])
  .put(shelfThickness, 'a', mm(40))
