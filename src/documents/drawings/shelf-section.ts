import { type Drawing, dimensionChain, label, line, rectangle, type Shape } from '../../geometry/drawing.ts'
import { type Length, less, longest, sum, ZERO } from '../../units/length.ts'
import type { HelperPart, HelperShelf } from '../audience-fields.ts'
import type { ForHelper } from '../for-helper.ts'
import { HOLD, isHeld } from '../held.ts'
import { roleOfMark } from '../mark-words.ts'

/** Shelves built alike share one section: the first of each depth and thickness. */
export function sectionShelves(view: ForHelper): readonly HelperShelf[] {
  const key = (s: HelperShelf) => `${s.depth} ${s.thickness} ${isHeld(s)}`
  return view.shelves.filter((shelf, i) => view.shelves.findIndex((s) => key(s) === key(shelf)) === i)
}

/** A shelf cut through from front to back: wall at the left, skins, front edge, and the cleat it slides over. */
export function shelfSection(shelf: HelperShelf, view: ForHelper): Drawing {
  const pieces = view.parts.filter((part) => part.mark === shelf.mark)
  const skin = pieces.find((part) => part.piece?.includes('skin') === true)
  const edge = pieces.find((part) => part.piece?.includes('edge') === true)
  const cleat = backCleat(shelf, view)
  const { depth, thickness } = shelf
  const edgeThickness = edge?.thickness ?? ZERO
  const skinDepth = less(depth, edgeThickness)
  const wall = times2(thickness)
  const shapes: Shape[] = [
    line({ x: ZERO, z: less(ZERO, thickness) }, { x: ZERO, z: sum(thickness, thickness) }, 'outline'),
    rectangle({ x: ZERO, z: ZERO, width: depth, height: thickness }, 'edge'),
  ]
  if (skin !== undefined) {
    shapes.push(rectangle({ x: ZERO, z: ZERO, width: skinDepth, height: skin.thickness }, 'edge'))
    const upper = less(thickness, skin.thickness)
    shapes.push(rectangle({ x: ZERO, z: upper, width: skinDepth, height: skin.thickness }, 'edge'))
  }
  if (edge !== undefined)
    shapes.push(rectangle({ x: skinDepth, z: ZERO, width: edgeThickness, height: thickness }, 'edge'))
  if (cleat !== undefined) shapes.push(...cleatShapes(cleat, shelf))
  return {
    says: `Section through shelf ${shelf.mark}, front to back, with its cleat at the wall.`,
    frame: { x: ZERO, z: less(ZERO, thickness), width: depth, height: sum(wall, thickness) },
    shapes: [...shapes, ...chains(shelf, view, { skin, edge, cleat })],
  }
}

const times2 = (l: Length): Length => sum(l, l)

/** The cleat along the back wall: the longest of the shelf's cleats. */
function backCleat(shelf: HelperShelf, view: ForHelper): HelperPart | undefined {
  const cleats = view.parts.filter((p) => roleOfMark(p.mark) === 'C' && p.id.startsWith(`${shelf.id}/`))
  return cleats.find((p) => p.id.includes('back')) ?? cleats[0]
}

/** Cleat top stands where it is set out; its height is its width as sawn. */
function cleatShapes(cleat: HelperPart, shelf: HelperShelf): readonly Shape[] {
  const bottom = less(sum(shelf.thickness, less(shelf.cleatTop, shelf.z)), cleat.placement.dz)
  const box = { x: ZERO, z: longest(bottom, ZERO), width: cleat.placement.dy, height: cleat.placement.dz }
  return [rectangle(box, 'outline'), label(box, cleat.mark)]
}

function chains(
  shelf: HelperShelf,
  view: ForHelper,
  {
    skin,
    edge,
    cleat,
  }: {
    readonly skin: HelperPart | undefined
    readonly edge: HelperPart | undefined
    readonly cleat: HelperPart | undefined
  },
): readonly Shape[] {
  const says = isHeld(shelf) ? () => HOLD : view.show.length
  const { depth, thickness } = shelf
  const t = skin?.thickness ?? ZERO
  const cleatTop = sum(thickness, less(shelf.cleatTop, shelf.z))
  const cleatStations = cleat === undefined ? [] : [less(cleatTop, cleat.placement.dz), cleatTop]
  return [
    ...dimensionChain(
      {
        side: 'below',
        row: 1,
        stations: [
          ZERO,
          ...(cleat === undefined ? [] : [cleat.placement.dy]),
          less(depth, edge?.thickness ?? ZERO),
          depth,
        ],
      },
      says,
    ),
    ...dimensionChain({ side: 'below', row: 2, stations: [ZERO, depth] }, says),
    ...dimensionChain({ side: 'right', row: 1, stations: [ZERO, t, less(thickness, t), thickness] }, says),
    ...dimensionChain({ side: 'left', row: 1, stations: cleatStations }, says),
  ]
}
