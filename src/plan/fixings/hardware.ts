import { rowOf, SHELF_PINS } from '../../figures/hardware.ts'
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
import type { FixingLine } from './fixing-line.ts'

interface HardwareWork {
  readonly boxes: readonly Box[]
  readonly fronts: FrontPlan
  readonly parts: readonly Part[]
}

/** Hinges, slides, handles, bumpers, shelf pins and packers. */
export function hardware(context: PlanContext, { boxes, fronts, parts }: HardwareWork): readonly FixingLine[] {
  const { leaves, drawers, drawerMake } = fronts
  const shelves = boxes.reduce((n, box) => n + box.looseShelves, 0)
  const crosses = parts.filter((part) => parseMark(part.mark)?.role === 'U' && part.piece === 'cross-piece')
  return [
    ...leaves.map((leaf) => hinges(context, leaf)),
    ...handles(context, fronts),
    piece('bumper', 'bumper', leaves.length > 0 ? 'leaves, two each' : '', 2 * leaves.length),
    piece('bumper', 'bumper', 'drawers, two each', 2 * drawers.length),
    ...(drawerMake === undefined ? [] : drawers.flatMap((drawer) => drawerLines(context, drawerMake, drawer))),
    pins(context, shelves),
    piece(
      'packer',
      'packer',
      'under each cross-piece, front and back',
      2 * crosses.reduce((n, p) => n + p.quantity, 0),
    ),
  ]
}

const piece = (id: string, item: string, use: string, count: number, price?: string): FixingLine => ({
  id,
  item,
  use,
  count,
  unit: 'piece',
  ...(price === undefined ? {} : { price }),
})

const PINS_PER_SHELF = 4

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
  const onDrawers = drawers.reduce((n, drawer) => n + handleShares(context, drawer.width).length, 0)
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

function pins({ settle }: PlanContext, shelves: number): FixingLine {
  const pin = rowOf(
    SHELF_PINS,
    settle.choice(shelfPin, undefined, () => ({ value: 'plain', because: 'shelves are seldom moved' })),
  )
  return piece('shelf-pin', pin.item, 'loose shelves, four each', PINS_PER_SHELF * shelves, pin.price)
}
