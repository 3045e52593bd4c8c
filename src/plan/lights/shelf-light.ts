import { lights } from '../../job/chapters/lights.ts'
import { questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import { type Message, raise } from '../../things/message.ts'
import { type CutOut, onHold, type Part } from '../../things/part.ts'
import { type Length, less, over, shortest, size, sum, ZERO } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { Shelf } from '../shelves/shelves.ts'
import type { RunnableWall } from '../survey/survey.ts'
import type { Light, LightMake, LightWork } from './light.ts'
import { LIGHT_CUT } from './light-cuts.ts'
import { noPlaceForCable } from './light-messages.ts'
import { cableFromEnd, cableLength, lineFromFront, stripLength } from './light-sums.ts'
import { aboutLights, type HostPanel, profileWork } from './profile-work.ts'

/** A light with what it does to the parts round it. */
export interface PlannedLight {
  readonly light: Light
  readonly work: readonly LightWork[]
  readonly messages: readonly Message[]
}

export interface ShelfToLight {
  readonly shelf: Shelf
  readonly wall: RunnableWall
  readonly parts: readonly Part[]
  /** The box its driver sits in; undefined = elsewhere, at the floor. */
  readonly driverBox: Box | undefined
}

/** The strip under a floating shelf: its profile in the lower face, a hole into the void, a notch through the back cleat. */
export function shelfLight(context: PlanContext, make: LightMake, on: ShelfToLight): PlannedLight | undefined {
  const host = lowerPanel(on)
  return host === undefined ? undefined : within(on.shelf.id, () => lightUnder(context, make, on, host))
}

/** The broadest piece of the shelf lies. */
const lowerPanel = ({ shelf, parts }: ShelfToLight): Part | undefined =>
  parts.filter((p) => p.mark === shelf.mark).toSorted((a, b) => b.length * b.width - a.length * a.width)[0]

function lightUnder(context: PlanContext, make: LightMake, on: ShelfToLight, host: Part): PlannedLight {
  const { figures, cut } = context
  const { shelf } = on
  const strip = stripLength({
    room: shortest(shelf.backLength, shelf.frontLength),
    endClear: figures.length('lights.end-clear'),
    cut,
  })
  const fromFront = lineFromFront({
    place: make.place,
    panelDepth: host.width,
    edgeLeast: figures.length('lights.edge-least'),
    profileWidth: make.width,
    cut,
  })
  const where = `under shelf ${shelf.number}, ${shelf.bay.name}`
  const panel: HostPanel = { part: host, which: 'the lower one, under face', where, strip, fromFront }
  const at = cableAt(context, on)
  const profile = profileWork(context, make, panel, at)
  const notch = cleatNotch(context, on, at, where)
  const messages = [...profile.messages, ...notch.messages]
  return {
    light: {
      id: `${shelf.id}/light`,
      bay: shelf.bay,
      mark: shelf.mark,
      where,
      strip,
      fromFront,
      cable: cableOf(context, on),
      waitsFor: onHold(host) ? host.waitsFor : [],
    },
    work: [{ part: host.id, ...profile, waitsFor: on.wall.waits.fixing }, ...notch.work],
    messages,
  }
}

/** From the shelf's left end: past the side cleat and the first rib, moved on past a stud the cleat is screwed to. */
function cableAt(context: PlanContext, { shelf, wall }: ShelfToLight): Length {
  const { figures, cut } = context
  const first = cableFromEnd({
    cleatDepth: figures.length('cleat.depth'),
    ribInset: sum(figures.length('shelf.rib-end'), size(shelf.offsetLeft)),
    ribThickness: figures.length('panel.edge'),
    holeEdge: figures.length('lights.hole-edge'),
    hole: figures.length('lights.hole'),
    cut,
  })
  const clear = sum(figures.length('lights.hole-edge'), over(figures.length('lights.hole'), 2))
  const centres = wall.fixing.kind === 'studs' ? wall.fixing.centres : []
  const stud = centres.find((c) => size(less(c, sum(shelf.x, first))) < clear)
  return stud === undefined ? first : cut.up(less(sum(stud, clear), shelf.x))
}

/** The cable passes under the back cleat to the wall: a notch in its lower edge, at most half its height. */
function cleatNotch(
  context: PlanContext,
  { shelf, parts }: ShelfToLight,
  at: Length,
  where: string,
): Pick<PlannedLight, 'work' | 'messages'> {
  const { figures, show } = context
  const hole = figures.length('lights.hole')
  const cleat = parts.find((p) => p.id === `${shelf.id}/cleat-back`)
  if (cleat === undefined) return { work: [], messages: [] }
  if (hole > over(cleat.width, 2)) {
    const values = { where, hole: show.withUnit(hole), edge: show.withUnit(figures.length('lights.hole-edge')) }
    const fixes = [
      {
        says: 'no lights under the shelves',
        answers: [{ key: questionKey('job', lights), value: 'boxes' }],
      },
    ]
    return { work: [], messages: [raise(noPlaceForCable, { ...aboutLights(shelf.bay.name, cleat.id), fixes }, values)] }
  }
  const start = over(less(shelf.backLength, cleat.length), 2)
  const notch: CutOut = {
    what: `${LIGHT_CUT}: cable notch in its lower edge`,
    x: less(at, start, over(hole, 2)),
    z: ZERO,
    width: hole,
    height: hole,
  }
  return { work: [{ part: cleat.id, cutOuts: [notch], details: [], waitsFor: [] }], messages: [] }
}

/** Out of the shelf, down the wall to the box its driver sits in, or to the floor. */
function cableOf({ figures }: PlanContext, { shelf, driverBox }: ShelfToLight): number {
  const under = less(shelf.z, shelf.thickness)
  return cableLength({
    outward: driverBox === undefined ? shelf.depth : sum(shelf.depth, driverBox.depth),
    downward: driverBox === undefined ? under : less(under, driverBox.run.z0),
    sideways: driverBox === undefined ? ZERO : size(less(driverBox.x, shelf.x)),
    cableSpare: figures.number('lights.cable-spare'),
  })
}
