import { boxCount } from '../../job/chapters/cabinets.ts'
import { mantelLength } from '../../job/chapters/mantel.ts'
import { shelfCount } from '../../job/chapters/shelves.ts'
import { questionKey } from '../../things/field.ts'
import type { Sheet, Stick } from '../../things/material.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { Part } from '../../things/part.ts'
import { less, times } from '../../units/length.ts'
import { parseMark } from '../marks.ts'
import { fitsBed } from './block.ts'
import { bedOf, blockOf, type Sawing } from './layout.ts'

/** A part that no sheet or stock length of its material holds. */
export const largerThanSheet = messageKind<{
  readonly mark: string
  readonly name: string
  readonly size: string
  readonly stock: string
  readonly holds: string
}>({
  code: 'S16',
  weight: 'stop',
  source: 'geometry',
  says: ({ mark, name, size, stock, holds }) => ({
    short: `${mark} ${name} is larger than the sheet it is cut from.`,
    why: `It is sawn at ${size}; ${stock} holds at most ${holds} after trimming.`,
    todo: `Make it in two pieces with a joint, ask for a larger sheet, or make it no larger than ${holds}. It is left out of the layouts.`,
  }),
})

/** Whether a part can be cut from its material at all, grain counted. */
export const fitsStock = (part: Part, material: Sheet | Stick, sawing: Pick<Sawing, 'kerf' | 'trim'>): boolean =>
  material.kind === 'stick'
    ? part.roughLength <= material.stockLength
    : fitsBed(blockOf(part, 0, sawing.kerf), bedOf(material, sawing))

/** The stop for a part that does not fit, naming it, its sheet and what would fit. */
export function tooLarge(part: Part, material: Sheet | Stick, { trim, show }: Sawing): Message {
  const holds =
    material.kind === 'stick'
      ? `${show.withUnit(material.stockLength)} long`
      : `${show.length(less(material.sheetLength, times(trim, 2)))} × ${show.withUnit(less(material.sheetWidth, times(trim, 2)))}`
  return raise(
    largerThanSheet,
    { about: questionKey(...asksAbout(part)), place: part.goesTo, part: part.id },
    {
      mark: part.mark,
      name: part.name,
      size: `${show.length(part.roughLength)} × ${show.withUnit(part.roughWidth)}`,
      stock: material.name,
      holds,
    },
  )
}

/** The question that can make the part smaller. */
function asksAbout(part: Part): Parameters<typeof questionKey> {
  const role = parseMark(part.mark)?.role
  if (role === 'E') return [part.bay, mantelLength]
  return [part.bay, role === 'H' || role === 'C' ? shelfCount : boxCount]
}
