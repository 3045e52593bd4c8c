import type { Shape } from '../../geometry/drawing.ts'
import type { OnPaper } from './drawing-piece.ts'
import { TYPE } from './page-look.ts'
import type { PaperPen } from './paper-pen.ts'
import { type Box, overlaps } from './spread-text.ts'

type Tag = Extract<Shape, { readonly kind: 'tag' }>

/** Where a tag begins, from its point: right and down. */
const TAG_AT = {
  inside: { right: 1.5, down: 0 },
  near: { right: -11, down: -TYPE.small.line / 2 },
  far: { right: -22, down: -TYPE.small.line / 2 },
  under: { right: -3, down: 1 },
} as const

/** Letters beside pieces. One that finds no place clear of marks and other letters is left out: its piece is told by its size. */
export function drawTags(
  tags: readonly Tag[],
  { place, pen, taken: marks }: { readonly place: OnPaper; readonly pen: PaperPen; readonly taken: readonly Box[] },
): void {
  const taken = [...marks]
  for (const tag of tags) {
    const box = clearBox(tag, place, pen, taken)
    if (box === undefined) continue
    taken.push(box)
    pen.write(tag.says, { x: box.x, y: box.y, width: box.width + 2 }, { type: 'small' })
  }
}

function clearBox(tag: Tag, place: OnPaper, pen: PaperPen, taken: readonly Box[]): Box | undefined {
  const { right, down } = TAG_AT[tag.stands]
  const width = pen.widthOf(tag.says, { type: 'small' }) + 2
  const box = { x: place.x(tag.at.x) + right, y: place.y(tag.at.z) + down, width, height: TYPE.small.line }
  for (let shift = 0; shift <= Math.max(0, place.length(tag.room) - width - right); shift += 1) {
    const moved = { ...box, x: box.x + shift }
    if (!taken.some((other) => overlaps(moved, other))) return moved
  }
  return undefined
}
