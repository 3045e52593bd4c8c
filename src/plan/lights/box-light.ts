import { lightDriver } from '../../job/chapters/lights.ts'
import { questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import { type Message, raise } from '../../things/message.ts'
import type { CutOut, Part } from '../../things/part.ts'
import { type Length, less, size, sum, ZERO } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { LightMake, LightWork } from './light.ts'
import { LIGHT_CUT } from './light-cuts.ts'
import { noPlaceForCable } from './light-messages.ts'
import { cableLength, lineFromFront, stripLength } from './light-sums.ts'
import { aboutLights, profileWork } from './profile-work.ts'
import type { PlannedLight } from './shelf-light.ts'

export interface BoxToLight {
  readonly box: Box
  readonly parts: readonly Part[]
  readonly driverBox: Box | undefined
}

/** The strip inside a box, under its top or front rail. */
export function boxLight(context: PlanContext, make: LightMake, on: BoxToLight): PlannedLight | undefined {
  const host = on.parts.find((p) => p.id === `${on.box.id}/top` || p.id === `${on.box.id}/rail-front`)
  return host === undefined ? undefined : within(on.box.id, () => lightIn(context, make, on, host))
}

function lightIn(context: PlanContext, make: LightMake, on: BoxToLight, host: Part): PlannedLight {
  const { figures, cut } = context
  const { box } = on
  const strip = stripLength({ room: host.length, endClear: figures.length('lights.end-clear'), cut })
  const fromFront = lineFromFront({
    place: make.place,
    panelDepth: host.width,
    edgeLeast: figures.length('lights.edge-least'),
    profileWidth: make.width,
    cut,
  })
  const where = `in box ${box.number}, ${box.run.bay.name}`
  const profile = profileWork(
    context,
    make,
    { part: host, which: 'under face', where, strip, fromFront },
    // The strip's lead runs along the inside of the box: the hole in its own panel is the profile's open end.
    ZERO,
  )
  return {
    light: {
      id: `${box.id}/light`,
      bay: box.run.bay,
      mark: box.mark,
      where,
      strip,
      fromFront,
      cable: cableOf(context, on),
      waitsFor: box.waitsFor,
    },
    work: [
      {
        part: host.id,
        cutOuts: profile.cutOuts.filter((c) => !c.what.includes('cable hole')),
        details: profile.details,
        waitsFor: [],
      },
    ],
    messages: profile.messages,
  }
}

function cableOf({ figures }: PlanContext, { box, driverBox }: BoxToLight): number {
  return cableLength({
    outward: box.depth,
    downward: driverBox === undefined ? sum(box.height, box.run.z0) : box.height,
    sideways: driverBox === undefined ? ZERO : size(less(driverBox.x, box.x)),
    cableSpare: figures.number('lights.cable-spare'),
  })
}

/** The hole through a box back, where the cables of the shelves above come in, clear of its edges, nailers and cut-outs. */
export function backHole(
  context: PlanContext,
  { box, carcass, parts }: { readonly box: Box; readonly carcass: Length; readonly parts: readonly Part[] },
): { readonly work: readonly LightWork[]; readonly messages: readonly Message[] } {
  const { figures, show } = context
  const back = parts.find((p) => p.id === `${box.id}/back`)
  if (back === undefined) return { work: [], messages: [] }
  const hole = figures.length('lights.hole')
  const edge = figures.length('lights.hole-edge')
  const z = holeHeight(context, back.width, carcass)
  const taken = back.cutOuts.filter((c) => z < sum(c.z, c.height, edge) && sum(z, hole) > less(c.z, edge))
  const [t, last] = [carcass, less(back.length, hole)]
  const starts = [sum(t, edge), ...taken.map((c) => sum(c.x, c.width, edge))].toSorted((a, b) => a - b)
  const x = starts.find(
    (at) =>
      at <= less(last, t, edge) && taken.every((c) => at >= sum(c.x, c.width, edge) || sum(at, hole, edge) <= c.x),
  )
  if (x === undefined || z < edge) {
    const values = {
      where: `back of box ${box.number}, ${box.run.bay.name}`,
      hole: show.withUnit(hole),
      edge: show.withUnit(edge),
    }
    const fixes = [
      {
        says: 'the driver outside the boxes',
        answers: [{ key: questionKey('job', lightDriver), value: 'elsewhere' }],
      },
    ]
    const about = { ...aboutLights(`${box.run.bay.name}, box ${box.number}`, back.id), fixes }
    return { work: [], messages: [raise(noPlaceForCable, about, values)] }
  }
  const cutOut: CutOut = { what: `${LIGHT_CUT}: cable hole`, x: context.cut.near(x), z, width: hole, height: hole }
  return { work: [{ part: back.id, cutOuts: [cutOut], details: [], waitsFor: [] }], messages: [] }
}

/** Lower edge of the hole: under the upper nailer with wood between. */
const holeHeight = ({ figures, cut }: PlanContext, height: Length, carcass: Length): Length =>
  cut.down(
    less(
      height,
      carcass,
      figures.length('nailer.width'),
      figures.length('lights.hole-edge'),
      figures.length('lights.hole'),
    ),
  )

/** Holes through the sides between lit boxes and the box of the driver, so that one cable reaches all; from the rear edge. */
export function sideHoles(context: PlanContext, boxes: readonly Box[], parts: readonly Part[]): readonly LightWork[] {
  const { figures } = context
  const hole = figures.length('lights.hole')
  const edge = figures.length('lights.hole-edge')
  const between = boxes.flatMap((box, i) => [
    ...(i === 0 ? [] : [`${box.id}/side-left`]),
    ...(i === boxes.length - 1 ? [] : [`${box.id}/side-right`]),
  ])
  return parts
    .filter((p) => between.includes(p.id))
    .map((p) => ({
      part: p.id,
      cutOuts: [
        {
          what: `${LIGHT_CUT}: cable hole, from the rear edge, before the back goes on`,
          x: edge,
          z: holeHeight(context, p.length, p.thickness),
          width: hole,
          height: hole,
        },
      ],
      details: [`Cable hole ${context.show.length(hole)} across to the next box: both sides drilled together.`],
      waitsFor: [],
    }))
}
