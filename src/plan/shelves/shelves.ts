import { alignShelves, edgeThickness, shelfKind, shelfLoad, skinThickness } from '../../job/chapters/shelves.ts'
import { SHELVES } from '../../kinds/shelf/list.ts'
import { type Contribution, merged, NOTHING } from '../../things/contribution.ts'
import type { QuestionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import type { NamedBay } from '../../things/place.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { MantelPlan } from '../mantel/mantel.ts'
import { runPartMark } from '../marks.ts'
import type { RunnableWall, Survey } from '../survey/survey.ts'
import type { TopPlan } from '../tops/tops-and-ends.ts'
import type { BodyShape } from './body-shape.ts'
import { type ShelfBay, type ShelfPanels, shelfBay, shelfPlaceOf, withShelfThickness } from './shelf-bay.ts'
import { bayNotes, shelfMessages, unbuildable } from './shelf-checks.ts'
import { shelfConfirms } from './shelf-confirms.ts'
import { shelvesOverDevices } from './shelf-devices.ts'
import { shelfRoom } from './shelf-heights.ts'
import { countShelves, heightsOf, type ShelfLines } from './shelf-layout.ts'
import { cleatCount, type ShelfAt, shelfJoints, shelfParts } from './shelf-parts.ts'
import { shelfPressure } from './shelf-strength.ts'
import { type SharedWaits, shelfWaits } from './shelf-waits.ts'

/** One floating shelf. z = its upper face; x offsets in the bay's own axes. */
export interface Shelf {
  readonly bay: NamedBay
  readonly number: number
  /** `R-H2` */
  readonly mark: string
  readonly id: string
  readonly z: Length
  readonly thickness: Length
  readonly depth: Length
  readonly backLength: Length
  readonly frontLength: Length
  /** x of the back left corner of the body. */
  readonly x: Length
  /** Offsets of the ends over the depth, + to the right. */
  readonly offsetLeft: Length
  readonly offsetRight: Length
  readonly cleatTop: Length
  readonly sag: Length
  readonly waitsFor: readonly QuestionKey[]
}

export interface ShelfPlan {
  readonly shelves: readonly Shelf[]
  readonly contribution: Contribution
}

/** The floating shelves of every bay that has room for them, lined up across the wall where that is wanted. */
export function shelves(context: PlanContext, survey: Survey, tops: TopPlan, mantel: MantelPlan): ShelfPlan {
  const walls = survey.walls.filter((w): w is RunnableWall => w.kind !== 'breast')
  if (walls.length === 0) return { shelves: [], contribution: NOTHING }
  const panels = shelfPanels(context)
  const lines: ShelfLines = {
    aligned: context.settle.choice(alignShelves, undefined, () => ({
      value: true,
      because: 'the eye runs straight across',
    })),
    mantelTop: mantel.mantelTop,
  }
  const rooms = walls.map((wall) =>
    within(wall.bay.id, () => shelfRoom(context, wall, tops.counterTop.get(wall.bay.id))),
  )
  const unsettled = countShelves(context, rooms, lines)
    .filter(({ count }) => count > 0)
    .map(({ room, count }) => shelfBay(context, room, { count, panels, span: tops.spans.get(room.wall.bay.id) }))
  const bays = unsettled.map((bay) => withShelfThickness(context, bay, lines.aligned ? unsettled : [bay]))
  const mantelWaits = mantel.breasts.flatMap((b) => (b.mantel === undefined ? [] : b.waitsFor))
  const built = bays.map((bay) => {
    const together = lines.aligned ? walls : [bay.room.wall]
    const waits = { together, below: tops.restsOn, mantel: mantelWaits }
    return shelvesOf(context, bay, { bays, lines, panels, waits })
  })
  const over = built.map(({ bay, ats }) => ({ wall: bay.room.wall, shelves: ats.map((at) => at.shelf) }))
  return {
    shelves: over.flatMap((o) => o.shelves),
    contribution: merged(...built.map((b) => b.contribution), {
      ...NOTHING,
      messages: shelvesOverDevices(context, over, lines.aligned),
    }),
  }
}

function shelfPanels(context: PlanContext): ShelfPanels {
  const { settle, figures } = context
  const load = settle.choice(shelfLoad, undefined, () => ({
    value: 'books' as const,
    because: 'the heaviest usual load',
  }))
  const nominal = (figure: string) => () => ({
    value: figures.length(figure),
    origin: 'assumed' as const,
    because: 'its name at the counter: put the caliper on it',
  })
  const kind = settle.choice(shelfKind, undefined, () => ({
    value: 'hollow' as const,
    because: 'light, and nothing shows',
  }))
  return {
    kind: SHELVES[kind],
    skin: settle.choice(skinThickness, undefined, nominal('panel.skin')),
    edge: settle.choice(edgeThickness, undefined, nominal('panel.edge')),
    pressure: shelfPressure(context, load),
  }
}

interface Among {
  readonly bays: readonly ShelfBay[]
  readonly lines: ShelfLines
  readonly panels: ShelfPanels
  readonly waits: SharedWaits
}

function shelvesOf(context: PlanContext, bay: ShelfBay, among: Among) {
  const laid = within(bay.room.wall.bay.id, () => heightsOf(context, bay, among))
  const refused = unbuildable(context, bay)
  const ats = refused.length > 0 ? [] : laid.heights.map((z, i) => shelfAt(context, bay, among, { z, index: i }))
  const contribution: Contribution = {
    parts: ats.flatMap((at) => within(at.shelf.id, () => shelfParts(context, at))),
    joints: ats.flatMap((at) => within(at.shelf.id, () => shelfJoints(context, at))),
    messages: [
      ...laid.messages,
      ...refused,
      ...shelfMessages(context, ats, among.panels.pressure),
      ...shelfConfirms(context, bay, { ats, pressure: among.panels.pressure }),
      ...bayNotes(context, bay, ats),
    ],
  }
  return { bay, ats, contribution }
}

interface AtHeight {
  readonly z: Length
  readonly index: number
}

const shelfAt = (context: PlanContext, bay: ShelfBay, among: Among, at: AtHeight): ShelfAt =>
  within(shelfId(bay, at), () => shelfThere(context, bay, among, at))

const shelfId = (bay: ShelfBay, { index }: AtHeight): string => `${bay.room.wall.bay.id}/shelf-${index + 1}`

function shelfThere(context: PlanContext, bay: ShelfBay, among: Among, at: AtHeight): ShelfAt {
  const { wall } = bay.room
  const body: BodyShape = bay.bodyAt(at.z, bay.make.thickness)
  const number = at.index + 1
  const shelf: Shelf = {
    bay: wall.bay,
    number,
    mark: runPartMark(wall.bay, 'H', number),
    id: shelfId(bay, at),
    z: at.z,
    thickness: bay.make.thickness,
    depth: body.depth,
    backLength: body.back,
    frontLength: body.front,
    x: body.x,
    offsetLeft: body.offsetLeft,
    offsetRight: body.offsetRight,
    cleatTop: bay.make.kind.cleatTop(at.z, bay.make),
    sag: bay.make.kind.sag(shelfPlaceOf(body, bay), bay.make, among.panels.pressure),
    waitsFor: shelfWaits(context, bay, among.waits),
  }
  return { bay, shelf, body, firstCleat: at.index * cleatCount(bay) + 1 }
}
