import type { ShelfCleat, ShelfPiece } from '../../kinds/shelf/contract.ts'
import type { JointDraft } from '../../things/joint.ts'
import type { Part, Placement } from '../../things/part.ts'
import { type Length, less, longest, over, shortest, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { fromLevelLine } from '../level-line.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf, softwood } from '../materials.ts'
import { endOffsets } from '../tops/counter.ts'
import { endJointGaps } from '../tops/end-joint.ts'
import type { BodyShape } from './body-shape.ts'
import { type ShelfBay, shelfPlaceOf } from './shelf-bay.ts'
import type { Shelf } from './shelves.ts'
import { tapered } from './taper.ts'

/** A shelf with what it is made of. */
export interface ShelfAt {
  readonly bay: ShelfBay
  readonly shelf: Shelf
  readonly body: BodyShape
  /** Number of the bay's first cleat for this shelf. */
  readonly firstCleat: number
}

/** Skins, front edge, ends and ribs of one shelf, and its cleats. */
export function shelfParts(context: PlanContext, at: ShelfAt): readonly Part[] {
  const place = shelfPlaceOf(at.body, at.bay)
  const cleats = at.bay.make.kind.cleats(place, at.bay.make).filter((c) => c.length > 0 && c.height > 0)
  return [
    ...at.bay.make.kind.pieces(place, at.bay.make).map((piece) => piecePart(context, at, piece)),
    ...cleats.map((cleat, i) => cleatPart(context, at, cleat, i)),
  ]
}

/** Cleats a shelf of this bay has. */
export const cleatCount = (bay: ShelfBay): number => 1 + [bay.left, bay.right].filter((end) => end === 'wall').length

function piecePart(context: PlanContext, at: ShelfAt, piece: ShelfPiece): Part {
  const { shelf, bay, body } = at
  const long = piece.roughLength > longest(piece.backLength, piece.frontLength)
  const deep = piece.roughWidth > piece.width
  const lying = piece.piece === 'skin'
  return madePart({
    id: `${shelf.id}/${piece.piece}`,
    mark: shelf.mark,
    piece: piece.piece,
    name: piece.name,
    bay: shelf.bay.id,
    goesTo: `${shelf.bay.name}, shelf ${shelf.number}`,
    quantity: piece.quantity,
    ...tapered(context, { back: piece.backLength, front: piece.frontLength }),
    width: piece.width,
    thickness: piece.thickness,
    roughLength: piece.roughLength,
    roughWidth: piece.roughWidth,
    leaveLong: [...(long ? ['ends'] : []), ...(deep ? ['back edge'] : [])].join(' and '),
    material: mdf(piece.panel === 'skin' ? bay.make.skin : bay.make.edge),
    shows: piece.shows,
    details: [...piece.details, ...(lying ? [...endOffsets(context, body), ...highShelf(context, shelf)] : [])],
    ...(piece.coatedFaces === 0 ? {} : { coat: { surface: 'built-in', faces: piece.coatedFaces } as const }),
    placement: placementOf(at, piece),
    waitsFor: shelf.waitsFor,
    from: piece.from,
  })
}

function highShelf({ figures, show }: PlanContext, shelf: Shelf): readonly string[] {
  const reach = figures.length('shelf.step-needed')
  return shelf.z > reach ? [`Above ${show.withUnit(reach)}: a step is needed to reach it, for display only.`] : []
}

function placementOf({ bay, shelf, body }: ShelfAt, piece: ShelfPiece): Placement {
  const left = sum(bay.room.wall.originX, body.x)
  const { thickness, edge, skin } = bay.make
  const under = less(shelf.z, thickness)
  const behind = less(body.depth, edge)
  const length = longest(piece.backLength, piece.frontLength)
  const start = bay.left === 'free' ? sum(left, edge) : left
  if (piece.piece === 'edge')
    return { x: sum(left, frontShift(body)), y: behind, z: under, dx: body.front, dy: edge, dz: thickness }
  if (piece.piece === 'end') {
    const x = bay.left === 'free' ? left : less(sum(left, body.back), edge)
    return { x, y: ZERO, z: under, dx: edge, dy: behind, dz: thickness }
  }
  return piece.piece === 'skin'
    ? { x: start, y: ZERO, z: less(shelf.z, skin), dx: length, dy: behind, dz: skin }
    : {
        x: start,
        y: less(behind, piece.backLength),
        z: sum(under, skin),
        dx: edge,
        dy: piece.backLength,
        dz: piece.width,
      }
}

/** How far the front left corner lies right of the back left one: the middle of the board moves with the middle of the recess. */
const frontShift = (body: BodyShape): Length =>
  less(over(sum(body.offsetLeft, body.offsetRight), 2), over(less(body.front, body.back), 2))

function cleatPart(context: PlanContext, at: ShelfAt, cleat: ShelfCleat, index: number): Part {
  const { shelf, bay } = at
  const { show } = context
  const wall = bay.room.wall
  return madePart({
    id: `${shelf.id}/cleat-${cleat.at}`,
    mark: runPartMark(shelf.bay, 'C', at.firstCleat + index),
    name: 'shelf cleat',
    bay: shelf.bay.id,
    goesTo: `${shelf.bay.name}, shelf ${shelf.number}, ${cleat.at}`,
    length: cleat.length,
    width: cleat.height,
    thickness: cleat.depth,
    material: softwood(longest(cleat.height, cleat.depth), shortest(cleat.height, cleat.depth)),
    shows: '',
    details: [
      `Upper edge ${show.length(shelf.cleatTop)} above the highest floor point (${fromLevelLine(context, shelf.cleatTop)}), level with the other cleats of the shelf.`,
      'Cut to the wall and planed where it bows; one bead of construction adhesive behind it besides its screws.',
    ],
    placement: cleatPlacement(at, cleat),
    waitsFor: [...shelf.waitsFor, ...wall.waits.fixing],
    from: cleat.from,
  })
}

function cleatPlacement({ bay, shelf, body }: ShelfAt, cleat: ShelfCleat): Placement {
  const x = sum(bay.room.wall.originX, body.x, cleat.inset)
  const upright = { x, y: ZERO, z: less(shelf.cleatTop, cleat.height), dz: cleat.height }
  return cleat.at === 'back'
    ? { ...upright, dx: cleat.length, dy: cleat.depth }
    : { ...upright, dx: cleat.depth, dy: cleat.length }
}

/** Joints of a shelf: over and under, at the back and at each walled end. */
export function shelfJoints({ figures }: PlanContext, { bay, shelf, body }: ShelfAt): readonly JointDraft[] {
  const scribed = figures.length('scribe.fit')
  const back = { length: body.back, gap1: scribed, gap2: scribed, ends: ['left', 'right'] } as const
  // A corner too wide for caulk gets a loose strip, scribed to the wall: what is left to close is a scribed joint.
  const gaps =
    body.shape === 'parallel' && body.gapBack > figures.length('caulk.most')
      ? { gap1: scribed, gap2: scribed }
      : endJointGaps(body)
  const end = { length: body.depth, ...gaps, ends: ['front', 'back'] } as const
  const sides = (['left', 'right'] as const).filter((side) => bay[side] === 'wall')
  return [{ id: 'back', rest: back }, ...sides.map((side) => ({ id: side, rest: end }))].flatMap(({ id, rest }) =>
    (['over', 'under'] as const).map((face) => ({
      id: `${shelf.id}/${id}-${face}`,
      bay: shelf.bay.id,
      where: `shelf ${shelf.number}, ${id}, ${face}`,
      ...rest,
      colour: 'wall' as const,
      twoColours: true,
      waitsFor: shelf.waitsFor,
    })),
  )
}
