import { type Drawing, dimensionChain, type Shape } from '../../geometry/drawing.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, less, longest, shortest, sum, ZERO } from '../../units/length.ts'
import type { ForHelper } from '../audience.ts'
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

/** Nearest the wall the smallest pieces, then the bays, then the whole. */
function widthChains(view: ForHelper, left: Length, right: Length): readonly Shape[] {
  const says = view.show.length
  const bayEdges = view.bays.flatMap((bay) => {
    const frame = bayFrame(bay, view)
    return frame === undefined ? [] : [frame.x, sum(frame.x, frame.width)]
  })
  const pieces = view.bays.flatMap((bay) => widthStations(bay, view))
  return [
    ...dimensionChain({ side: 'below', row: 1, stations: [left, ...bayEdges, ...pieces, right] }, says),
    ...dimensionChain({ side: 'below', row: 2, stations: [left, ...bayEdges, right] }, says),
    ...(view.bays.length > 1 ? dimensionChain({ side: 'below', row: 3, stations: [left, right] }, says) : []),
  ]
}

/** Box edges and the opening's edges, on the wall. */
function widthStations(bay: NamedBay, view: ForHelper): readonly Length[] {
  const frame = bayFrame(bay, view)
  if (frame === undefined) return []
  const boxes = view.boxes.filter((box) => box.run.bay.id === bay.id)
  const opening = view.breasts.find((b) => b.bay.id === bay.id)?.opening
  return [
    ...boxes.flatMap((box) => [sum(frame.x, box.x), sum(frame.x, box.x, box.width)]),
    ...(opening === undefined ? [] : [sum(frame.x, opening.x), sum(frame.x, opening.x, opening.width)]),
  ]
}

/** The first bay's heights at the left, the last one's at the right, a breast's beside them. */
function heightChains(view: ForHelper): readonly Shape[] {
  const says = view.show.length
  const first = view.bays[0]
  const last = view.bays[view.bays.length - 1]
  const breast = view.bays.find((bay) => bay.kind === 'breast')
  const chain = (side: 'left' | 'right', row: number, bay: NamedBay | undefined) =>
    bay === undefined ? [] : dimensionChain({ side, row, stations: heightStations(bay, view) }, says)
  const other = last === first ? undefined : last
  return [
    ...chain('left', 1, first),
    ...chain('right', 1, other),
    ...chain('right', 2, breast === first || breast === other ? undefined : breast),
  ]
}

function heightStations(bay: NamedBay, view: ForHelper): readonly Length[] {
  const frame = bayFrame(bay, view)
  if (frame === undefined) return []
  const breast = view.breasts.find((b) => b.bay.id === bay.id)
  const { opening, mantel, screen } = breast ?? {}
  return [
    ZERO,
    frame.height,
    ...view.boxes.filter((b) => b.run.bay.id === bay.id).flatMap((b) => [b.run.z0, b.run.z1]),
    ...frontParts(bay, view)
      .filter((p) => p.mark.includes('-T'))
      .map((p) => sum(p.placement.z, p.placement.dz)),
    ...view.shelves.filter((s) => s.bay.id === bay.id).map((s) => s.z),
    ...(opening === undefined ? [] : [sum(opening.z, opening.height)]),
    ...(mantel === undefined ? [] : [mantel.underside, mantel.top]),
    ...(screen === undefined ? [] : [screen.z, sum(screen.z, screen.height)]),
  ]
}
