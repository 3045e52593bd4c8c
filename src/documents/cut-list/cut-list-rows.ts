import type { Length } from '../../units/length.ts'
import { inMillimetres } from '../../units/length.ts'
import type { HelperPart } from '../audience-fields.ts'
import type { BookCell, BookSheet } from '../book.ts'
import { cutInShop, cutOutWords } from '../cut-out-words.ts'
import type { ForHelper } from '../for-helper.ts'
import { HOLD, isHeld } from '../held.ts'
import type { PlainShow } from '../job-words.ts'
import { unitSign } from '../paper-size.ts'
import { questionWords } from '../question-words.ts'

/** One column of the cut list; `shown` = whether any part of the sheet has something to say in it. */
interface CutColumn {
  readonly head: string
  readonly width: number
  readonly cell: (part: HelperPart, view: ForHelper) => BookCell
  readonly shown?: (part: HelperPart) => boolean
}

/** Saw it at its finished size. */
const SAME = '='
/** Ticked by hand. */
const BOX = '☐'

/** A sheet for each material, in the order they are sawn: material, thickness, then the larger saw size first. */
export function cutListSheets(view: ForHelper): readonly BookSheet[] {
  const made = view.parts.filter((part) => part.supply === 'made')
  const materials = new Map(made.map((part) => [part.material, materialOf(part, view)]))
  return [...materials.values()].sort(byMaterial).map(({ id, name }) => {
    const parts = likeJoined([...made.filter((part) => part.material === id)].sort(bySawSize))
    const columns = columnsFor(view, parts)
    return {
      name,
      columns: columns.map(({ head, width }) => ({ head, width })),
      rows: parts.map((part) => columns.map((column) => column.cell(part, view))),
      frozenColumns: 1,
    }
  })
}

/** Family, then thinner before thicker: `MDF 1/4 in`, `MDF 3/4 in`, `softwood …`. */
const byMaterial = (a: MaterialOf, b: MaterialOf): number =>
  order(a.family, b.family) || a.thickness - b.thickness || order(a.name, b.name)

interface MaterialOf {
  readonly id: string
  readonly name: string
  readonly family: string
  readonly thickness: Length
}

const order = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1)

/** A material's family is the words before its first figure. */
function materialOf({ material, thickness }: HelperPart, view: ForHelper): MaterialOf {
  const name = nameOf(view, material)
  return { id: material, name, family: name.replace(/\d.*$/, ''), thickness }
}

/** Pieces that are one another's like in all that the sheet says stand in one row, with their number. */
function likeJoined(parts: readonly HelperPart[]): readonly HelperPart[] {
  const rows = new Map<string, HelperPart>()
  for (const part of parts) {
    const { id: _id, quantity, placement: _place, ...says } = part
    const key = JSON.stringify(says)
    const before = rows.get(key)
    rows.set(key, before === undefined ? part : { ...before, quantity: before.quantity + quantity })
  }
  return [...rows.values()]
}

const nameOf = (view: ForHelper, material: string): string => view.materials.get(material) ?? material

/** Parts that can be sawn before those on HOLD; then by saw size, so that equal settings stand together. */
const bySawSize = (a: HelperPart, b: HelperPart): number =>
  Number(isHeld(a)) - Number(isHeld(b)) || b.roughLength - a.roughLength || b.roughWidth - a.roughWidth

function columnsFor(view: ForHelper, parts: readonly HelperPart[]): readonly CutColumn[] {
  const unit = unitSign(view.show.units)
  const all: readonly CutColumn[] = [
    { head: 'mark', width: 9, cell: (p) => ({ bold: p.mark }) },
    {
      head: 'piece',
      width: 15,
      cell: (p) => (p.piece === undefined || p.piece === p.name ? p.name : `${p.name}, ${p.piece}`),
    },
    { head: 'goes to', width: 22, cell: (p) => p.goesTo },
    { head: 'no.', width: 5, cell: (p) => ({ value: p.quantity, format: 'count' }) },
    {
      head: `finish long (${unit})`,
      width: 10,
      cell: (p, v) => (isHeld(p) ? { bold: HOLD } : sizeCell(p.length, v.show)),
    },
    {
      head: `finish wide (${unit})`,
      width: 10,
      cell: (p, v) => (isHeld(p) ? { bold: HOLD } : sizeCell(p.width, v.show)),
    },
    {
      head: 'other end',
      width: 14,
      cell: (p) => (isHeld(p) ? null : (p.taper ?? null)),
      shown: (p) => p.taper !== undefined,
    },
    { head: `saw long (${unit})`, width: 10, cell: (p, v) => sawCell(p, p.roughLength, p.length, v.show) },
    { head: `saw wide (${unit})`, width: 10, cell: (p, v) => sawCell(p, p.roughWidth, p.width, v.show) },
    {
      head: 'leave long',
      width: 20,
      cell: (p, v) => (isHeld(p) ? waitsWords(p, v) : p.leaveLong),
      shown: (p) => p.leaveLong !== '' || isHeld(p),
    },
    { head: 'shows', width: 14, cell: (p) => p.shows },
    {
      head: 'grain',
      width: 8,
      cell: (p) => (p.grain === 'length' ? 'along its length' : null),
      shown: (p) => p.grain === 'length',
    },
    {
      head: 'joinery',
      width: 34,
      cell: (p, v) => (isHeld(p) ? null : joinery(p, v.show)),
      shown: (p) => p.details.length + p.cutOuts.length > 0,
    },
    { head: 'sawn', width: 6, cell: () => BOX },
    { head: 'fits', width: 6, cell: () => BOX },
  ]
  return all.filter((column) => column.shown === undefined || parts.some(column.shown))
}

/** Fractions stay as the tape shows them; millimetres are numbers. */
const sizeCell = (length: Length, show: PlainShow): BookCell =>
  show.units === 'inch' ? show.length(length) : { value: Math.round(inMillimetres(length) * 10) / 10, format: 'figure' }

function sawCell(part: HelperPart, rough: Length, finished: Length, show: PlainShow): BookCell {
  if (isHeld(part)) return null
  return rough === finished ? SAME : sizeCell(rough, show)
}

const waitsWords = (part: HelperPart, view: ForHelper): string =>
  `waits for: ${part.waitsFor.map((key) => questionWords(key, view.bays).short).join('; ')}`

const joinery = (part: HelperPart, show: PlainShow): string =>
  [
    ...part.details,
    ...part.cutOuts.map(
      (cut) => `Cut-out, ${cutOutWords(cut, show)}${cutInShop(cut) ? '' : '; measure again on site'}.`,
    ),
  ]
    .map(asSentence)
    .join(' ')

/** Begins with a capital and ends with a stop, so that one does not run into the next. */
const asSentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? '' : '.'}`
