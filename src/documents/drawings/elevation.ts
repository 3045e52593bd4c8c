import { type DimensionSide, type Drawing, dimensionChain, type Shape } from '../../geometry/drawing.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, less, longest, shortest, sum, ZERO } from '../../units/length.ts'
import type { ForHelper } from '../for-helper.ts'
import { HOLD, isHeld } from '../held.ts'
import { bayFrame, bayShapes, frontParts } from './bay-shapes.ts'

/** The whole wall from the room, with its dimension chains; undefined when no bay was measured. */
export function elevation(view: ForHelper): Drawing | undefined {
  const frames = view.bays.flatMap((bay) => bayFrame(bay, view) ?? [])
  const first = frames[0]
  if (first === undefined) return undefined
  const left = shortest(first.x, ...frames.map((f) => f.x))
  const right = longest(first.x, ...frames.map((f) => sum(f.x, f.width)))
  const top = longest(ZERO, ...frames.map((f) => f.height))
  return {
    says: `Front elevation of ${view.bays.map((b) => b.name).join(', ')}, with heights at both ends and widths below.`,
    frame: { x: left, z: ZERO, width: less(right, left), height: top },
    shapes: [
      ...view.bays.flatMap((bay) => bayShapes(bay, view, 'marked')),
      ...widthChains(view, left, right),
      ...heightChains(view),
    ],
  }
}

/** A place along a chain, and whether a measurement still to be taken can move it. */
interface Station {
  readonly at: Length
  readonly held: boolean
}

interface Chain {
  readonly side: DimensionSide
  readonly row: number
  readonly stations: readonly Station[]
}

/** Nearest the wall the smallest pieces, then the bays, then the whole. A figure over a bay not measured yet is HOLD. */
function widthChains(view: ForHelper, left: Length, right: Length): readonly Shape[] {
  const fixed = (at: Length): Station => ({ at, held: false })
  const bayEdges = view.bays.flatMap((bay) => {
    const frame = bayFrame(bay, view)
    return frame === undefined ? [] : [fixed(frame.x), fixed(sum(frame.x, frame.width))]
  })
  const ends = [fixed(left), fixed(right)]
  const pieces = view.bays.flatMap((bay) => widthStations(bay, view))
  const open = view.walls.filter((wall) => wall.waits.widths.length > 0)
  const overOpen = (from: Length, to: Length) => open.some((w) => from < sum(w.originX, w.width) && to > w.originX)
  const chain = (row: number, stations: readonly Station[]) =>
    heldChain({ side: 'below', row, stations }, view, overOpen)
  return [
    ...chain(1, [...ends, ...bayEdges, ...pieces]),
    ...chain(2, [...ends, ...bayEdges]),
    ...(view.bays.length > 1 ? chain(3, ends) : []),
  ]
}

const never = (): boolean => false

/** A dimension chain that gives no figure between places that wait for a measurement. */
function heldChain(
  { side, row, stations }: Chain,
  { show }: ForHelper,
  rests: (from: Length, to: Length) => boolean = never,
): readonly Shape[] {
  const held = new Set(stations.filter((s) => s.held).map((s) => s.at))
  const chain = dimensionChain({ side, row, stations: stations.map((s) => s.at) }, show.length)
  return chain.map((shape) => {
    if (shape.kind !== 'dimension') return shape
    const { from, to } = shape
    return held.has(from) || held.has(to) || rests(from, to) ? { ...shape, says: HOLD } : shape
  })
}

/** Box edges and the opening's edges, on the wall. */
function widthStations(bay: NamedBay, view: ForHelper): readonly Station[] {
  const frame = bayFrame(bay, view)
  if (frame === undefined) return []
  const boxes = view.boxes.filter((box) => box.run.bay.id === bay.id)
  const breast = view.breasts.find((b) => b.bay.id === bay.id)
  const edges = (x: Length, width: Length, held: boolean): readonly Station[] => [
    { at: sum(frame.x, x), held },
    { at: sum(frame.x, x, width), held },
  ]
  return [
    ...boxes.flatMap((box) => edges(box.x, box.width, boxHeld(box, view))),
    ...(breast?.opening === undefined ? [] : edges(breast.opening.x, breast.opening.width, isHeld(breast))),
  ]
}

const boxHeld = (box: ForHelper['boxes'][number], view: ForHelper): boolean =>
  isHeld(box.run) || view.parts.some((part) => part.id.startsWith(`${box.id}/`) && isHeld(part))

/** The first bay's heights at the left, the last one's at the right, a breast's beside them. */
function heightChains(view: ForHelper): readonly Shape[] {
  const first = view.bays[0]
  const last = view.bays[view.bays.length - 1]
  const breast = view.bays.find((bay) => bay.kind === 'breast')
  const chain = (side: 'left' | 'right', row: number, bay: NamedBay | undefined) =>
    bay === undefined ? [] : heldChain({ side, row, stations: heightStations(bay, view) }, view)
  const other = last === first ? undefined : last
  return [
    ...chain('left', 1, first),
    ...chain('right', 1, other),
    ...chain('right', 2, breast === first || breast === other ? undefined : breast),
  ]
}

function heightStations(bay: NamedBay, view: ForHelper): readonly Station[] {
  const frame = bayFrame(bay, view)
  const wall = view.walls.find((w) => w.bay.id === bay.id)
  if (frame === undefined || wall === undefined) return []
  return [
    { at: ZERO, held: false },
    { at: frame.height, held: wall.waits.ceiling.length > 0 },
    ...view.boxes
      .filter((b) => b.run.bay.id === bay.id)
      .flatMap((b) => [b.run.z0, b.run.z1].map((at) => ({ at, held: boxHeld(b, view) }))),
    ...frontParts(bay, view)
      .filter((p) => p.mark.includes('-T'))
      .map((p) => ({ at: sum(p.placement.z, p.placement.dz), held: isHeld(p) })),
    ...view.shelves.filter((s) => s.bay.id === bay.id).map((s) => ({ at: s.z, held: isHeld(s) })),
    ...breastStations(bay, view),
  ]
}

function breastStations(bay: NamedBay, view: ForHelper): readonly Station[] {
  const breast = view.breasts.find((b) => b.bay.id === bay.id)
  if (breast === undefined) return []
  const { opening, mantel, screen } = breast
  const mantelHeld = isHeld(breast) || view.parts.some((p) => p.bay === bay.id && isHeld(p))
  return [
    ...(opening === undefined ? [] : [{ at: sum(opening.z, opening.height), held: isHeld(breast) }]),
    ...(mantel === undefined ? [] : [mantel.underside, mantel.top].map((at) => ({ at, held: mantelHeld }))),
    ...(screen === undefined
      ? []
      : [screen.z, sum(screen.z, screen.height)].map((at) => ({ at, held: isHeld(breast) }))),
  ]
}
