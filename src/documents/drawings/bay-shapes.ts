import { type DrawingBox, hatch, label, line, rectangle, type Shape } from '../../geometry/drawing.ts'
import { FIRST_LEG } from '../../plan/mantel/leg-parts.ts'
import { bothLegs } from '../../plan/mantel/mantel-legs.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, less, longest, over, sum, times, ZERO } from '../../units/length.ts'
import type { HelperPart } from '../audience-fields.ts'
import type { ForHelper } from '../for-helper.ts'
import { roleOfMark } from '../mark-words.ts'

/** With part marks (the elevation), or the bare picture (for joint numbers). */
export type BayStyle = 'marked' | 'plain'

/** The bay's outline on the wall; undefined when the wall is not known there. */
export function bayFrame(bay: NamedBay, view: ForHelper): DrawingBox | undefined {
  const wall = view.walls.find((w) => w.bay.id === bay.id)
  return wall === undefined || wall.width <= 0
    ? undefined
    : { x: wall.originX, z: ZERO, width: wall.width, height: longest(wall.lowestCeiling, ZERO) }
}

/** What is seen of one bay from the room, in the wall's own axes. */
export function bayShapes(bay: NamedBay, view: ForHelper, style: BayStyle): readonly Shape[] {
  const frame = bayFrame(bay, view)
  if (frame === undefined) return []
  const words = (box: DrawingBox, ...lines: readonly string[]) => (style === 'marked' ? [label(box, ...lines)] : [])
  return [
    rectangle(frame, 'outline'),
    ...trimShapes(bay, view, frame),
    ...frontParts(bay, view).flatMap((part) => {
      const box = seenFromFront(part)
      return [rectangle(box, 'edge'), ...markOf(part, box, frame, words)]
    }),
    ...boxShapes(bay, view, frame.x, words),
    ...insideShapes(bay, view),
    ...view.shelves
      .filter((shelf) => shelf.bay.id === bay.id)
      .flatMap((shelf) => {
        const z = less(shelf.z, shelf.thickness)
        const box = { x: sum(frame.x, shelf.x), z, width: shelf.frontLength, height: shelf.thickness }
        return [rectangle(box, 'edge'), ...words(overIt(box, frame), shelf.mark)]
      }),
    ...breastShapes(bay, view, frame, words),
  ]
}

/** Kept crown and baseboard: facts of the wall, thin; dashed where boxes stand before them. */
function trimShapes(bay: NamedBay, view: ForHelper, frame: DrawingBox): readonly Shape[] {
  const wall = view.walls.find((w) => w.bay.id === bay.id)
  if (wall === undefined) return []
  const end = sum(frame.x, frame.width)
  const level = (z: Length, from: Length, to: Length, pen: 'thin' | 'hidden'): readonly Shape[] =>
    from < to ? [line({ x: from, z }, { x: to, z }, pen)] : []
  const run = view.boxes.find((box) => box.run.bay.id === bay.id)?.run
  const first = run === undefined ? end : sum(frame.x, run.startX)
  const last = run === undefined ? end : sum(first, run.width)
  return [
    ...(wall.crown > 0 ? level(less(frame.height, wall.crown), frame.x, end, 'thin') : []),
    ...(wall.baseboard > 0
      ? [
          ...level(wall.baseboard, frame.x, first, 'thin'),
          ...level(wall.baseboard, first, last, 'hidden'),
          ...level(wall.baseboard, last, end, 'thin'),
        ]
      : []),
  ]
}

/** Room for a mark over a piece that is too thin to hold it: a share of the bay's height. */
const OVER = 0.05
export const overIt = (box: DrawingBox, frame: DrawingBox): DrawingBox => ({
  ...box,
  z: sum(box.z, box.height),
  height: times(frame.height, OVER),
})

/** A filler is too narrow for its mark: the key and the cut list name it. A counter has it above. */
function markOf(part: HelperPart, box: DrawingBox, frame: DrawingBox, words: Words): readonly Shape[] {
  const role = roleOfMark(part.mark)
  if (role === 'F' || role === 'G') return []
  return words(role === 'T' ? overIt(box, frame) : box, part.mark)
}

type Words = (box: DrawingBox, ...lines: readonly string[]) => readonly Shape[]

/** Fillers, kick plates, gables and counters: the parts whose own front is seen. */
export function frontParts(bay: NamedBay, view: ForHelper): readonly HelperPart[] {
  return view.parts.filter((part) => {
    const role = roleOfMark(part.mark)
    if (part.bay !== bay.id || role === undefined) return false
    return 'FPG'.includes(role) || (role === 'T' && !part.id.includes('/box-'))
  })
}

const seenFromFront = ({ placement: { x, z, dx, dz } }: HelperPart): DrawingBox => ({ x, z, width: dx, height: dz })

function boxShapes(bay: NamedBay, view: ForHelper, originX: Length, words: Words): readonly Shape[] {
  const boxes = view.boxes.filter((box) => box.run.bay.id === bay.id)
  const fronts = [...view.leaves, ...view.drawers].filter((front) => front.box.run.bay.id === bay.id)
  return [
    ...boxes.flatMap((box) => {
      const seen = { x: sum(originX, box.x), z: box.run.z0, width: box.width, height: box.height }
      const open = fronts.every((front) => front.box.id !== box.id)
      return [rectangle(seen, 'edge'), ...(open ? words(seen, box.mark) : [])]
    }),
    ...fronts.flatMap((front) => {
      const seen = { x: sum(originX, front.x), z: front.z, width: front.width, height: front.height }
      return [rectangle(seen, 'thin'), ...words(seen, front.mark)]
    }),
  ]
}

/** Dividers and fixed shelves behind the fronts: dashed, one line in the middle of each. */
function insideShapes(bay: NamedBay, view: ForHelper): readonly Shape[] {
  const inside = view.parts.filter((part) => part.bay === bay.id && 'JX'.includes(roleOfMark(part.mark) ?? ' '))
  return inside.map(({ placement: { x, z, dx, dz } }) => {
    const upright = dz > dx
    const from = upright ? { x: sum(x, over(dx, 2)), z } : { x, z: sum(z, over(dz, 2)) }
    const to = upright ? { x: from.x, z: sum(z, dz) } : { x: sum(x, dx), z: from.z }
    return line(from, to, 'hidden')
  })
}

function breastShapes(bay: NamedBay, view: ForHelper, frame: DrawingBox, words: Words): readonly Shape[] {
  const breast = view.breasts.find((b) => b.bay.id === bay.id)
  if (breast === undefined) return []
  const { opening, mantel, screen } = breast
  const moved = (box: DrawingBox): DrawingBox => ({ ...box, x: sum(frame.x, box.x) })
  const shapes: Shape[] = []
  if (opening !== undefined) {
    const box = moved(opening)
    shapes.push(hatch(box, 'masonry'), rectangle(box, 'edge'))
  }
  if (screen !== undefined) shapes.push(rectangle(moved(screen), 'hidden'), ...words(moved(screen), 'screen'))
  if (mantel !== undefined) {
    const x = sum(frame.x, mantel.x)
    const box = { x, z: mantel.underside, width: mantel.length, height: less(mantel.top, mantel.underside) }
    const under = sum(mantel.underside, mantel.frieze)
    const joint = line({ x, z: under }, { x: sum(x, mantel.length), z: under }, 'thin')
    shapes.push(rectangle(box, 'edge'), joint, ...words(box, `${bay.letter}-E1`))
    const legs = mantel.legs === undefined ? [] : bothLegs(mantel.legs)
    legs.forEach(({ at }, i) => {
      shapes.push(rectangle(moved(at), 'edge'), ...words(moved(at), `${bay.letter}-E${i + FIRST_LEG}`))
    })
  }
  return shapes
}
