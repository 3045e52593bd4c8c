import { backThickness } from '../../job/chapters/cabinets.ts'
import { drawerSide } from '../../job/chapters/drawers.ts'
import { within } from '../../things/formula.ts'
import type { Part, Placement, SizesFrom } from '../../things/part.ts'
import { type Length, less, over, sum } from '../../units/length.ts'
import type { BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { mdf, plywood } from '../materials.ts'
import { checkWords } from './door-choices.ts'
import { drawerBottomLength, drawerBottomWidth, drawerEndLength, drawerHeight, slideLength } from './drawer-body.ts'
import type { DrawerMake } from './drawer-make.ts'
import type { Drawer } from './drawers.ts'
import { behindFronts, frontParts } from './front-parts.ts'
import type { LeafMake } from './leaves.ts'

interface Make {
  readonly leaf: LeafMake
  readonly drawer: DrawerMake
}

/** All parts of one drawer: its front, and the drawer box of two sides, two ends and a bottom. They share its mark. */
export function drawerParts(context: PlanContext, plan: BoxPlan, make: Make, drawer: Drawer): readonly Part[] {
  const { box, number } = drawer
  return within(`${box.id}/drawer-${number}`, () => [
    ...frontParts(context, { kind: make.drawer.kind, frame: make.leaf.frame }, drawer, {
      name: 'drawer front',
      goesTo: placeOf(drawer),
      drilling: (piece) => (piece.carries === 'whole' || piece.piece === 'panel' ? holeWords(context, drawer) : []),
    }),
    ...sides(context, make.drawer, drawer),
    ...ends(context, make.drawer, drawer),
    bottom(context, plan, make.drawer, drawer),
  ])
}

const placeOf = ({ box, number }: Drawer): string => `${box.run.bay.name}, box ${box.number}, drawer ${number}`

const holeWords = ({ show }: PlanContext, { holes }: Drawer): readonly string[] =>
  holes.map(
    (hole) =>
      `handle hole ${show.withUnit(hole.fromTop)} from the top of the front, ${show.withUnit(hole.fromLeft)} from its left edge`,
  )

interface BodyPiece {
  readonly id: string
  readonly piece: string
  readonly length: Length
  readonly width: Length
  readonly from: SizesFrom
  readonly details: readonly string[]
  readonly placement: Placement
}

/** A piece of the drawer box: plywood, its grain along, not painted. */
function bodyPart(make: DrawerMake, drawer: Drawer, { id, ...rest }: BodyPiece): Part {
  const part = madePart({
    ...rest,
    id: `${drawer.box.id}/drawer-${drawer.number}/${id}`,
    mark: drawer.mark,
    name: 'drawer',
    bay: drawer.box.run.bay.id,
    goesTo: placeOf(drawer),
    thickness: make.side,
    material: plywood(make.side),
    shows: 'upper edge',
    waitsFor: drawer.waitsFor,
  })
  return { ...part, grain: 'length' }
}

function sides(context: PlanContext, make: DrawerMake, drawer: Drawer): readonly Part[] {
  const { show } = context
  const { body, box } = drawer
  const y = less(behindFronts(context, drawer), body.length)
  const left = sum(box.run.wall.originX, body.x)
  const line = `slide ${show.withUnit(body.length)} long, its screw line ${show.withUnit(make.line)} above the lower edge`
  return (['left', 'right'] as const).map((side) =>
    bodyPart(make, drawer, {
      id: `side-${side}`,
      piece: 'side',
      length: body.length,
      width: body.height,
      from: { length: slideLength, width: drawerHeight, thickness: drawerSide },
      details: [grooveWords(context, make), `${line}${checkWords(make.known, 'slide')}`, ...make.slide.joinery],
      placement: {
        x: side === 'left' ? left : less(sum(left, body.width), make.side),
        y,
        z: body.z,
        dx: make.side,
        dy: body.length,
        dz: body.height,
      },
    }),
  )
}

function ends(context: PlanContext, make: DrawerMake, drawer: Drawer): readonly Part[] {
  const { body, box } = drawer
  const length = drawerEndLength({ drawerWidth: body.width, drawerSide: make.side })
  const front = behindFronts(context, drawer)
  return (['front', 'back'] as const).map((where) =>
    bodyPart(make, drawer, {
      id: `end-${where}`,
      piece: `${where} end`,
      length,
      width: body.height,
      from: { length: drawerEndLength, width: drawerHeight, thickness: drawerSide },
      details: [
        grooveWords(context, make),
        'glued and pinned between the sides',
        ...(where === 'front' ? ['screws into the drawer front from inside, into its wood and not its panel'] : []),
      ],
      placement: {
        x: sum(box.run.wall.originX, body.x, make.side),
        y: where === 'front' ? less(front, make.side) : less(front, body.length),
        z: body.z,
        dx: length,
        dy: make.side,
        dz: body.height,
      },
    }),
  )
}

const grooveWords = ({ figures, show }: PlanContext, { bottomUp }: DrawerMake): string =>
  `groove for the bottom ${show.withUnit(figures.length('back.groove'))} deep, ${show.withUnit(bottomUp)} above the lower edge`

function bottom(context: PlanContext, plan: BoxPlan, make: DrawerMake, drawer: Drawer): Part {
  const { figures, cut } = context
  const { body, box } = drawer
  const [groove, grooveClear] = [figures.length('back.groove'), figures.length('back.groove-clear')]
  const given = { drawerSide: make.side, groove, grooveClear, cut }
  const width = drawerBottomWidth({ ...given, drawerWidth: body.width })
  const length = drawerBottomLength({ ...given, slideLength: body.length })
  const thickness = plan.backThickness
  return madePart({
    id: `${box.id}/drawer-${drawer.number}/bottom`,
    mark: drawer.mark,
    name: 'drawer',
    piece: 'bottom',
    bay: box.run.bay.id,
    goesTo: placeOf(drawer),
    length: width,
    width: length,
    thickness,
    material: mdf(thickness),
    shows: 'inner face',
    details: ['in the grooves of sides and ends, put in as they are glued'],
    placement: {
      x: sum(box.run.wall.originX, body.x, over(less(body.width, width), 2)),
      y: sum(less(behindFronts(context, drawer), body.length), over(less(body.length, length), 2)),
      z: sum(body.z, make.bottomUp),
      dx: width,
      dy: length,
      dz: thickness,
    },
    waitsFor: drawer.waitsFor,
    from: { length: drawerBottomWidth, width: drawerBottomLength, thickness: backThickness },
  })
}
