import { boxCount } from '../../job/chapters/cabinets.ts'
import { extraParts } from '../../job/chapters/extras.ts'
import { mantelLength } from '../../job/chapters/mantel.ts'
import { shelfCount } from '../../job/chapters/shelves.ts'
import { questionKey } from '../../things/field.ts'
import { formula } from '../../things/formula.ts'
import type { Sheet, Stick } from '../../things/material.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, over, sum, times } from '../../units/length.ts'
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
  readonly pieces: string
  readonly enough: string
}>({
  code: 'S16',
  weight: 'stop',
  source: 'geometry',
  says: ({ mark, name, size, stock, holds, pieces, enough }) => ({
    short: `${mark} ${name} is larger than the sheet it is cut from.`,
    why: `It is sawn at ${size}; ${stock} holds at most ${holds} after trimming.`,
    todo: `Make it of ${pieces}, ask for ${enough}, or make it no larger than ${holds}. It is left out of the layouts.`,
  }),
})

/** Whether a part can be cut from its material at all, grain counted. */
export const fitsStock = (part: Part, material: Sheet | Stick, sawing: Pick<Sawing, 'kerf' | 'trim'>): boolean =>
  material.kind === 'stick'
    ? part.roughLength <= material.stockLength
    : fitsBed(blockOf(part, 0, sawing.kerf), bedOf(material, sawing))

/** The stop for a part that does not fit, naming it, its sheet, what would fit, where to joint it and which sheet would do. */
export function tooLarge(part: Part, material: Sheet | Stick, sawing: Sawing): Message {
  const { show } = sawing
  const usable = usableOf(material, sawing)
  const { roughLength, roughWidth } = part
  const flat = material.kind === 'sheet'
  return raise(
    largerThanSheet,
    { about: questionKey(...asksAbout(part)), place: part.goesTo, part: part.id },
    {
      mark: part.mark,
      name: part.name,
      size: `${show.length(roughLength)} × ${show.withUnit(roughWidth)}`,
      stock: material.name,
      holds: flat
        ? `${show.length(usable.length)} × ${show.withUnit(usable.width)}`
        : `${show.withUnit(usable.length)} long`,
      pieces: piecesWords(part, usable, sawing),
      enough: flat
        ? `a sheet of at least ${show.length(withTrim(roughLength, sawing))} × ${show.withUnit(withTrim(roughWidth, sawing))}`
        : `a length of at least ${show.withUnit(roughLength)}`,
    },
  )
}

interface Usable {
  readonly length: Length
  readonly width: Length
}

/** What of the sheet is left after trimming; a stick is used whole. */
const usableOf = (material: Sheet | Stick, { trim }: Sawing): Usable =>
  material.kind === 'stick'
    ? { length: material.stockLength, width: material.width }
    : { length: less(material.sheetLength, times(trim, 2)), width: less(material.sheetWidth, times(trim, 2)) }

const withTrim = (size: Length, { trim }: Sawing): Length => sum(size, times(trim, 2))

/** Fewest pieces of equal size, none larger than the stock holds. */
export const piecesFor = formula(
  {
    id: 'panels.pieces',
    plain: 'size it is sawn at / size the stock holds, up to a whole number',
    source: 'geometry',
    gives: 'count',
    units: { size: 'length', holds: 'length' },
  },
  (of: { readonly size: Length; readonly holds: Length }): number => Math.ceil(of.size / of.holds),
)

/** `2 pieces end to end, joint at 60 in`: the long way of the part lies along the sheet; grain keeps its length there. */
function piecesWords(part: Part, usable: Usable, { show }: Sawing): string {
  const { roughLength, roughWidth } = part
  const turned = part.grain === 'none' && roughWidth > roughLength
  const [endToEnd, beside] = turned ? [roughWidth, roughLength] : [roughLength, roughWidth]
  return [
    jointWords(endToEnd, piecesFor({ size: endToEnd, holds: usable.length }), { way: 'end to end', show }),
    jointWords(beside, piecesFor({ size: beside, holds: usable.width }), { way: 'side by side', show }),
  ]
    .filter((words) => words !== '')
    .join(', each of ')
}

function jointWords(
  size: Length,
  pieces: number,
  { way, show }: { readonly way: string; readonly show: Sawing['show'] },
): string {
  if (pieces <= 1) return ''
  const joints = Array.from({ length: pieces - 1 }, (_, i) => show.withUnit(over(times(size, i + 1), pieces)))
  return `${pieces} pieces ${way}, jointed at ${joints.join(' and ')}`
}

/** The question that can make the part smaller. */
function asksAbout(part: Part): Parameters<typeof questionKey> {
  const role = parseMark(part.mark)?.role
  if (role === 'E') return [part.bay, mantelLength]
  if (role === 'Z') return [part.bay, extraParts]
  return [part.bay, role === 'H' || role === 'C' ? shelfCount : boxCount]
}
