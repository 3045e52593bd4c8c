import { stationsBetween } from '../../geometry/edge.ts'
import { shelfDepth, shelfLength, shelfSetBack, shelfThickness } from '../../job/chapters/shelves.ts'
import { bow, returns } from '../../job/chapters/wall.ts'
import type { KindOfShelf, ShelfCleat, ShelfEnd, ShelfKind, ShelfPlace } from '../../kinds/shelf/contract.ts'
import { formula, within } from '../../things/formula.ts'
import { type Length, less, longest, over, size, sum, times, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import { backCleatHeld, type Held } from '../fixings/wall-fixing-kinds.ts'
import { widthAt } from '../survey/outline.ts'
import type { AlcoveWall, FlatWall } from '../survey/survey.ts'
import type { Stretch } from '../tops/tops-and-ends.ts'
import { type BodyShape, bodyLength, slidInBody, squareBody } from './body-shape.ts'
import type { ShelfRoom } from './shelf-heights.ts'
import { thinnestThatCarries } from './shelf-strength.ts'

/** How the shelves of one bay are made: what is the same for all of them. */
export interface ShelfBay {
  readonly room: ShelfRoom
  readonly count: number
  readonly depth: Length
  readonly make: KindOfShelf
  readonly left: ShelfEnd
  readonly right: ShelfEnd
  /** Body of a shelf whose top is at z. */
  readonly bodyAt: (z: Length, thickness: Length) => BodyShape
}

/** What the shelves of all bays share. */
export interface ShelfPanels {
  readonly skin: Length
  readonly edge: Length
  readonly pressure: number
  readonly kind: ShelfKind
}

/** A bay's shelves before their thickness is settled: `need` is the thinnest that carries its own load. */
export interface UnsettledShelfBay extends Omit<ShelfBay, 'make'> {
  readonly bare: KindOfShelf
  readonly need: { readonly thickness: Length; readonly passes: boolean }
}

/** Depth of a shelf: what there is, less the set-back behind the end of the return. */
const depthOf = formula(
  {
    id: 'shelf.depth',
    plain: 'depth of the return (or the depth asked) − set-back, down to the cut step',
    source: 'common practice, no source',
    from: { room: [returns, { id: 'recess.depth' }, shelfDepth], setBack: shelfSetBack },
  },
  (of: { readonly room: Length; readonly setBack: Length; readonly cut: CutStep }): Length =>
    of.cut.down(less(of.room, of.setBack)),
)

/** Length of a shelf that no returns stop. */
const lengthOnFlat = formula(
  {
    id: 'shelf.length',
    plain: 'the length asked, down to the cut step',
    source: 'common practice, no source',
    from: { asked: shelfLength },
  },
  (of: { readonly asked: Length; readonly cut: CutStep }): Length => of.cut.down(of.asked),
)

/** The longest shelf one sheet gives. */
const longestOfOneSheet = formula(
  {
    id: 'shelf.longest-of-one-sheet',
    plain: 'sheet length − 2 × trim − what is left long, down to the cut step',
    source: 'geometry',
    from: { leftLong: { id: 'shelf.long' } },
  },
  (of: {
    readonly sheetLength: Length
    readonly sheetTrim: Length
    readonly leftLong: Length
    readonly cut: CutStep
  }): Length => of.cut.down(less(of.sheetLength, times(of.sheetTrim, 2), of.leftLong)),
)

/** What a back edge is sawn deeper for: the bow of the wall and the pencil line. */
const spareDepthOf = formula(
  {
    id: 'shelf.spare-depth',
    plain: 'spare for scribing + the larger of hollow and hump of the back wall',
    source: 'common practice, no source',
    from: { scribe: { id: 'back.scribe' }, hollow: bow, proud: bow },
  },
  (of: { readonly scribe: Length; readonly hollow: Length; readonly proud: Length }): Length =>
    sum(of.scribe, longest(of.hollow, of.proud)),
)

interface ShelvesAsked {
  readonly count: number
  readonly panels: ShelfPanels
  readonly span: Stretch | undefined
}

/** Depth and length of the shelves of a bay, each answered or suggested, and the thickness they need. */
export const shelfBay = (context: PlanContext, room: ShelfRoom, of: ShelvesAsked): UnsettledShelfBay =>
  within(room.wall.bay.id, () => bayBeforeThickness(context, room, of))

function bayBeforeThickness(context: PlanContext, room: ShelfRoom, of: ShelvesAsked): UnsettledShelfBay {
  const { wall } = room
  const stand = wall.kind === 'alcove' ? inAlcove(context, wall) : onFlat(context, wall, of.span)
  const bare: KindOfShelf = {
    kind: of.panels.kind,
    thickness: ZERO,
    skin: of.panels.skin,
    edge: of.panels.edge,
    spareDepth: spareDepthOf({ scribe: context.figures.length('back.scribe'), ...wall.bow }),
    figures: context.figures,
    cut: context.cut,
  }
  const longestPlace = shelfPlaceOf(longestBody(context, room, stand), stand)
  const need = thinnestThatCarries(context, {
    place: longestPlace,
    make: bare,
    pressure: of.panels.pressure,
    screws: screwsFor(context, room, { place: longestPlace, x: stand.x, make: bare }),
  })
  return { room, count: of.count, ...stand, bare, need }
}

/** The bay with its thickness settled. Suggested: what the bays it lines up with need, the thickest of them. */
export function withShelfThickness(
  context: PlanContext,
  bay: UnsettledShelfBay,
  together: readonly UnsettledShelfBay[],
): ShelfBay {
  const { bare, need, ...rest } = bay
  const thickness = context.settle.choice(shelfThickness, bay.room.wall.bay, () => ({
    value: longest(need.thickness, ...together.map((b) => b.need.thickness)),
    because: thicknessReason(bay, together),
  }))
  return { ...rest, make: { ...bare, thickness } }
}

function thicknessReason({ need }: UnsettledShelfBay, together: readonly UnsettledShelfBay[]): string {
  if (!need.passes) return 'the thickest offered; it does not carry the load yet'
  return together.some((b) => b.need.thickness > need.thickness)
    ? 'as thick as the longest shelf they line up with'
    : 'the thinnest that carries its load'
}

type Stand = Pick<ShelfBay, 'depth' | 'left' | 'right' | 'bodyAt'> & { readonly x: Length }

function inAlcove(context: PlanContext, wall: AlcoveWall): Stand {
  const { settle, figures, cut } = context
  const setBack = settle.choice(shelfSetBack, undefined, () => ({
    value: figures.length('shelf.set-back'),
    because: 'a shelf never stands proud of its recess',
  }))
  const depth =
    wall.depth === undefined
      ? depthOf({
          room: settle.choice(shelfDepth, wall.bay, () => ({
            value: figures.length('box.depth-flat'),
            because: 'no return limits it: a usual depth',
          })),
          setBack: ZERO,
          cut,
        })
      : depthOf({ room: wall.depth, setBack, cut })
  const play = figures.length('shelf.play')
  const bodyAt = (z: Length, thickness: Length) =>
    slidInBody({ wall, from: less(z, thickness), to: z, depth: longest(depth, ZERO), play, cut })
  return { depth, left: 'wall', right: 'wall', bodyAt, x: ZERO }
}

function onFlat(context: PlanContext, wall: FlatWall, span: Stretch | undefined): Stand {
  const { settle, figures, cut } = context
  const usual = span ?? { x: ZERO, length: wall.width }
  const inOnePiece = longestInOnePiece(context)
  const asked = settle.choice(shelfLength, wall.bay, () =>
    usual.length > inOnePiece
      ? { value: inOnePiece, because: 'the longest that one sheet gives', from: longestOfOneSheet }
      : { value: usual.length, because: span === undefined ? 'the wall’s length' : 'as long as what stands below' },
  )
  const length = lengthOnFlat({ asked, cut })
  const room = settle.choice(shelfDepth, wall.bay, () => ({
    value: figures.length('shelf.depth-flat'),
    because: 'it hangs on its back: no deeper than the screws hold',
  }))
  const depth = depthOf({ room, setBack: ZERO, cut })
  const x = startOnFlat(wall, usual, length)
  const left: ShelfEnd = wall.wallAtLeft && x <= 0 ? 'wall' : 'free'
  const right: ShelfEnd = wall.wallAtRight && sum(x, length) >= wall.width ? 'wall' : 'free'
  const play = figures.length('shelf.play')
  const walledEnds = [left, right].filter((end) => end === 'wall').length
  const body = squareBody({
    x: left === 'wall' ? sum(x, play) : x,
    length: bodyLength({ free: length, play, walledEnds, cut }),
    depth,
  })
  return { depth, left, right, x, bodyAt: () => ({ ...body, gapBack: play, gapFront: play }) }
}

/** A trimmed sheet, less what a shelf is left long. */
const longestInOnePiece = ({ figures, cut }: PlanContext): Length =>
  longestOfOneSheet({
    sheetLength: figures.length('sheet.length'),
    sheetTrim: figures.length('sheet.trim'),
    leftLong: figures.length('shelf.long'),
    cut,
  })

/** Over what stands below; from a wall where it reaches one; in the middle else. */
function startOnFlat(wall: FlatWall, usual: Stretch, length: Length): Length {
  if (length === usual.length) return usual.x
  if (wall.wallAtLeft) return ZERO
  return wall.wallAtRight ? less(wall.width, length) : sum(usual.x, over(less(usual.length, length), 2))
}

/** What a body is to the kind of shelf: lengths, and what its ends meet. */
export const shelfPlaceOf = (body: BodyShape, ends: Pick<ShelfBay, 'left' | 'right'>): ShelfPlace => ({
  depth: body.depth,
  back: body.back,
  front: body.front,
  extent: body.extent,
  slant: longest(size(body.offsetLeft), size(body.offsetRight)),
  left: ends.left,
  right: ends.right,
})

/** The longest a shelf of this bay can be at any height there is: what the suggested thickness must carry. */
function longestBody({ cut, figures }: PlanContext, room: ShelfRoom, stand: Stand): BodyShape {
  const body = stand.bodyAt(room.highest, ZERO)
  const { wall } = room
  if (wall.kind === 'flat') return body
  const top = longest(room.highest, room.below)
  const heights = [wall.left.back, wall.left.front, wall.right.back, wall.right.front].flatMap((edge) =>
    stationsBetween(edge, room.below, top),
  )
  const widest = longest(ZERO, ...heights.map((z) => widthAt(wall, z, stand.depth)))
  const front = longest(ZERO, cut.down(less(widest, times(figures.length('shelf.play'), 2))))
  return { ...body, front }
}

/** What holds the back cleat of a shelf; undefined where it has none. */
export function backCleatOf(
  context: PlanContext,
  room: ShelfRoom,
  of: { readonly place: ShelfPlace; readonly x: Length; readonly make: KindOfShelf },
): { readonly cleat: ShelfCleat; readonly held: Held } | undefined {
  const cleat = of.make.kind.cleats(of.place, of.make)[0]
  if (cleat === undefined) return undefined
  const from = sum(of.x, cleat.inset)
  const held = backCleatHeld(context, room.wall.fixing, { ...cleat, from, to: sum(from, cleat.length) })
  return { cleat, held }
}

/** Screws in the back cleat of a shelf that carry. */
export const screwsFor = (...of: Parameters<typeof backCleatOf>): number => backCleatOf(...of)?.held.holding ?? 0
