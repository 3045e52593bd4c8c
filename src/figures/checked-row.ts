import { checkedFile } from './checked-file.ts'
import { type FigureRow, rowSchema, valuesOf } from './figure.ts'
import { lengthWritten } from './figure-length.ts'

/** A row of a figure file. Throws with file, row and field when it is not as it must be. */
export function checkedRow(file: string, at: number, content: object): FigureRow {
  const id = 'id' in content && typeof content.id === 'string' ? ` (${content.id})` : ''
  const place = `${file}, row ${at + 1}${id}`
  const row = checkedFile(place, rowSchema(content), content)
  const fault = faultOf(row)
  if (fault !== undefined) throw new Error(`${place}, ${fault}`)
  return row
}

/** What a schema cannot say: lengths can be read, a safety row names its safe side, a source is not "none" when it was read. */
function faultOf(row: FigureRow): string | undefined {
  const unreadable = valuesOf(row).find(([, value]) => typeof value === 'string' && lengthWritten(value) === undefined)
  if (unreadable !== undefined)
    return `field ${unreadable[0]}: "${unreadable[1]}" is not a length: write 1 1/4 in or 32 mm.`
  if ((row.change === undefined) !== (row.safe === undefined))
    return 'field safe: a row that changes only to the safe side says which side is safe, "more" or "less"; other rows say neither.'
  if (row.known === 'read' && row.source.includes('no source')) return 'field known: what has no source was not read.'
  if (row.known === 'yours') return 'field known: a published row is not yours.'
  return undefined
}
