import { type Day, showDayAndYear } from '../../units/day.ts'
import { type Block, type Fact, factOf, heading, type Paper, SPACE, together } from '../block.ts'
import type { Book } from '../book.ts'
import type { Assets, PacketDocument, PacketFile, Stamp } from '../document.ts'
import { type ForShop, forShops } from '../for-shop.ts'
import { HOLD } from '../held.ts'
import { paperSize, unitWord } from '../paper-size.ts'
import { words } from '../words/template.ts'
import { writePdf } from '../write/pdf.ts'
import { writeXlsx } from '../write/xlsx.ts'

/** One request for each thing bought in, as paper and as a workbook of the same rows. */
export const requests: PacketDocument = {
  id: 'requests',
  reader: 'supplier',
  says: 'requests to outside shops',
  needed: (plan) => plan.supply.requests.length > 0,
  write: async (plan, assets, stamp) => {
    const files = await Promise.all(forShops(plan).map((view) => requestFiles(view, assets, stamp)))
    return files.flat()
  },
}

async function requestFiles(view: ForShop, assets: Assets, stamp: Stamp): Promise<readonly PacketFile[]> {
  const path = `suppliers/${view.request.id}-request`
  return [
    { path: `${path}.pdf`, bytes: await writePdf(requestPaper(view, assets), assets, stamp) },
    { path: `${path}.xlsx`, bytes: await writeXlsx(requestBook(view), stamp) },
  ]
}

/** The request on paper: who asks, what, how finished, when. */
export function requestPaper(view: ForShop, assets: Assets): Paper {
  const { request, show, orderBy, neededBy } = view
  const lines = request.lines.map(withoutHeldSize)
  const same = saidOfAll(lines)
  return {
    name: `request, ${request.title.toLowerCase()}`,
    job: view.title,
    size: paperSize(show.units),
    sections: [
      {
        turned: 'upright',
        title: `Request: ${request.title.toLowerCase()}`,
        under: `for the job ${view.title} · all sizes in ${unitWord(show.units)}, width before height`,
        blocks: [
          ...factOf('from', view.business === undefined ? [] : [view.business]),
          ...words('request.md', assets.templates, {
            item: request.title.toLowerCase(),
            job: view.title,
            neededBy: dayOr(neededBy),
            orderBy: dayOr(orderBy),
            area: request.area === undefined ? false : show.area(request.area),
            unit: unitWord(show.units),
          }),
          heading('What is asked for'),
          ...factOf('all alike', [...same]),
          ...lines.flatMap((line) => [SPACE, lineBlock(line, same)]),
          SPACE,
          ...factOf('finish', request.finish),
          ...factOf('drilling', request.drilling),
        ],
      },
    ],
  }
}

const dayOr = (day: Day | undefined): string | false => (day === undefined ? false : showDayAndYear(day))

type Line = ForShop['request']['lines'][number]

/** A line on HOLD is asked for later, because its size may change: neither it nor what is set out by it is printed. */
const withoutHeldSize = (line: Line): Line =>
  line.hold ? { ...line, size: `${HOLD}: size follows`, details: line.details.filter((d) => !/\d/.test(d)) } : line

/** Details that every line has, said once; a single line says its own. */
function saidOfAll(lines: readonly Line[]): ReadonlySet<string> {
  const [first, ...others] = lines
  if (first === undefined || others.length === 0) return new Set()
  return new Set(first.details.filter((detail) => others.every((line) => line.details.includes(detail))))
}

/** Mark, number and size at a glance, then what is its own, in full width. */
function lineBlock(line: Line, same: ReadonlySet<string>): Block {
  const head: Fact = {
    kind: 'fact',
    word: line.mark,
    weight: 'bold',
    lines: [`${line.quantity} × ${line.item}, ${line.size}`],
    bar: line.hold,
    tick: true,
  }
  return together(
    head,
    ...factOf(
      '',
      line.details.filter((detail) => !same.has(detail)),
    ),
  )
}

/** The same rows for a shop that types them into its own list. */
export const requestBook = (view: ForShop): Book => ({
  title: `${view.title} · ${view.request.title}`,
  paper: paperSize(view.show.units),
  sheets: [
    {
      name: view.request.id,
      columns: [
        { head: 'mark', width: 12 },
        { head: 'item', width: 24 },
        { head: 'number', width: 8 },
        { head: `size, ${unitWord(view.show.units)}`, width: 26 },
        { head: 'details', width: 60 },
        { head: 'needed by', width: 12 },
      ],
      rows: view.request.lines
        .map(withoutHeldSize)
        .map((line) => [
          { bold: line.mark },
          line.item,
          { value: line.quantity, format: 'count' },
          line.size,
          line.details.join('; '),
          view.neededBy ?? null,
        ]),
      frozenColumns: 1,
    },
  ],
})
