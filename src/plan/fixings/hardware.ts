import { chosenRow, SHELF_PINS } from '../../figures/hardware.ts'
import { longestScrewSold } from '../../figures/stock-lengths.ts'
import { shelfPin } from '../../job/chapters/hardware.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, sum } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { handleOf, hingeOf } from '../fronts/door-choices.ts'
import type { DrawerMake } from '../fronts/drawer-make.ts'
import type { Drawer } from '../fronts/drawers.ts'
import type { FrontPlan, Leaf } from '../fronts/fronts.ts'
import { handleShares } from '../fronts/handles.ts'
import { parseMark } from '../marks.ts'
import { countOver, type FixingLine } from './fixing-line.ts'

interface HardwareWork {
  readonly boxes: readonly Box[]
  readonly fronts: FrontPlan
  readonly parts: readonly Part[]
}

/** Hinges, slides, handles, bumpers, shelf pins and packers. */
export function hardware(context: PlanContext, { boxes, fronts, parts }: HardwareWork): readonly FixingLine[] {
  const { leaves, drawers, drawerMake } = fronts
  const shelves = boxes.map((box) => box.looseShelves)
  const crosses = parts.filter((part) => parseMark(part.mark)?.role === 'U' && part.piece === 'cross-piece')
  return [
    ...leaves.map((leaf) => hinges(context, leaf)),
    ...handles(context, fronts),
    piece(
      'bumper',
      'bumper',
      'leaves, two each',
      leaves.map(() => BUMPERS),
    ),
    piece(
      'bumper',
      'bumper',
      'drawers, two each',
      drawers.map(() => BUMPERS),
    ),
    ...(drawerMake === undefined ? [] : drawers.flatMap((drawer) => drawerLines(context, drawerMake, drawer))),
    pins(context, shelves),
    piece(
      'packer',
      'packer',
      'under each cross-piece, front and back',
      crosses.map((p) => 2 * p.quantity),
    ),
  ]
}

const piece = (
  id: string,
  item: string,
  use: string,
  each: number | readonly number[],
  price?: string,
): FixingLine => ({
  id,
  item,
  use,
  count: countOver(id, typeof each === 'number' ? [each] : each),
  unit: 'piece',
  ...(price === undefined ? {} : { price }),
})

const PINS_PER_SHELF = 4
const BUMPERS = 2

/** Hinges of a leaf, by the arm that laps as far as the leaf does: what is said when they are ordered. */
function hinges(context: PlanContext, { hinges: count, arm, overlay }: Leaf): FixingLine {
  const { id, item, price } = hingeOf(context)
  const lap = `leaves, overlay ${context.show.withUnit(overlay)}`
  return arm === undefined
    ? piece(`hinge.${id}`, item, lap, count, price)
    : piece(`hinge.${id}.${arm.replaceAll(' ', '-')}`, `${item}, ${arm}`, lap, count, price)
}

function handles(context: PlanContext, { leaves, drawers }: FrontPlan): readonly FixingLine[] {
  const { line, item, price } = handleOf(context).handle
  const onDrawers = drawers.map((drawer) => handleShares(context, drawer.width).length)
  return [piece(line, item, 'leaves', leaves.length, price), piece(line, item, 'drawers', onDrawers, price)]
}

/** Slides of one drawer, the screws into its front, and the pins that hold its box together. */
function drawerLines(context: PlanContext, make: DrawerMake, drawer: Drawer): readonly FixingLine[] {
  const { figures, show } = context
  const { slide, side } = make
  const { length, height } = drawer.body
  const long = show.withUnit(length)
  const screw = longestScrewSold(frontScrewRoom(context, side, drawer.thickness), figures.units)
  return [
    piece(`slide.${slide.id}.${show.length(length)}`, `${slide.item}, ${long}`, 'drawers', 1, slide.price),
    piece(
      'screw.front',
      `drawer front screw ${show.withUnit(screw)}`,
      'drawer fronts',
      figures.number('drawer.front-screws'),
    ),
    piece('pin.drawer', 'trim pin', 'corners of drawer boxes', CORNERS * pinsInCorner(context, height)),
  ]
}

/** Through the front end of the drawer box into the front, and not through its face. */
const frontScrewRoom = ({ figures }: PlanContext, side: Length, front: Length): Length =>
  less(sum(side, front), figures.length('screw.join-less'))

const CORNERS = 4
const pinsInCorner = ({ figures }: PlanContext, height: Length): number =>
  Math.max(2, Math.ceil(height / figures.length('pin.drawer-pitch')))

function pins({ settle }: PlanContext, shelves: readonly number[]): FixingLine {
  const pin = chosenRow(
    SHELF_PINS,
    settle.choice(shelfPin, undefined, () => ({ value: 'plain', because: 'shelves are seldom moved' })),
  )
  return piece(
    'shelf-pin',
    pin.item,
    'loose shelves, four each',
    shelves.map((n) => PINS_PER_SHELF * n),
    pin.price,
  )
}
