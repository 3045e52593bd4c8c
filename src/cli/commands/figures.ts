import { type FigureRow, valuesOf } from '../../figures/figure.ts'
import { sourceWords, valueWords } from '../../figures/figure-words.ts'
import { asWritten, ownRows } from '../../figures/own-figures.ts'
import { publishedFiles, publishedRows } from '../../figures/published.ts'
import { WrongUse } from '../../things/failure.ts'
import { nearestWords } from '../../things/nearest.ts'
import type { Given } from '../command.ts'
import { EXIT, type ExitCode } from '../exit-code.ts'
import { ownFiguresPath, readOwnFigures } from '../own-figures.ts'
import type { Surroundings } from '../surroundings.ts'

type OwnRows = ReadonlyMap<string, FigureRow>

/** `figures`: every figure with its value and source, file by file, and where it is the person's own; or one of them in full. */
export async function figures({ json, where }: Given, around: Surroundings): Promise<ExitCode> {
  const own = ownRows(await readOwnFigures(around), publishedRows())
  const chosen = where === undefined ? undefined : namedRow(where)
  const path = await ownFiguresPath(around)
  if (json) around.print(JSON.stringify(figuresJson(chosen, own), undefined, 2))
  else if (chosen === undefined) listed(own, path, around)
  else around.print(oneInFull(chosen, own, path))
  return EXIT.done
}

function namedRow(id: string): FigureRow {
  const row = publishedRows().get(id)
  if (row !== undefined) return row
  const near = nearestWords(id, [...publishedRows().keys()])
  throw new WrongUse(
    `There is no figure "${id}".${near.length === 0 ? '' : ` Nearest: ${near.join(', ')}.`} nichework figures lists all.`,
  )
}

function listed(own: OwnRows, path: string, around: Surroundings): void {
  for (const { file, rows } of publishedFiles()) {
    around.print(`\n${file}`)
    for (const row of rows) for (const line of rowLines(row, own.get(row.id))) around.print(line)
  }
  around.say(`\n${own.size} of these are your own, in ${path}. How to put one in: nichework figures --where ID`)
}

const rowLines = (row: FigureRow, mine: FigureRow | undefined): readonly string[] => [
  `  ${row.id}   ${valueWords(row)}   ${row.says}   [${sourceWords(row)}]`,
  ...(mine === undefined ? [] : [`    yours: ${valueWords(mine)}   ${mine.source}`]),
]

const SIDES = { more: 'only to a larger value', less: 'only to a smaller value' } as const

function oneInFull(row: FigureRow, own: OwnRows, path: string): string {
  const mine = own.get(row.id)
  return [
    `${row.id}: ${row.says}`,
    `  published  ${valueWords(row)}`,
    `  source     ${sourceWords(row)}`,
    ...(mine === undefined ? [] : [`  yours      ${valueWords(mine)}   ${mine.source}`]),
    ...(row.safe === undefined ? [] : [`  safety     changes ${SIDES[row.safe]}; local code and the manual govern`]),
    `  your own   in ${path}, between { and }:`,
    `             ${asWritten(row).replace('Write it: ', '')}`,
    '             A job keeps the figures it was begun with; --own-figures, or the line in Check answers, brings it up to date.',
  ].join('\n')
}

const figuresJson = (chosen: FigureRow | undefined, own: OwnRows): object => ({
  format: 'nichework-figures',
  version: 1,
  figures: publishedFiles().flatMap(({ file, rows }) =>
    rows.filter((row) => chosen === undefined || row === chosen).map((row) => rowJson(file, row, own.get(row.id))),
  ),
})

function rowJson(file: string, row: FigureRow, mine: FigureRow | undefined): object {
  const { id, says, source, edition, section, region, known, safe } = row
  return {
    id,
    says,
    file,
    values: Object.fromEntries(valuesOf(row)),
    unit: 'unit' in row ? row.unit : 'length',
    source,
    edition,
    section,
    region,
    known,
    safe,
    yours: mine === undefined ? undefined : { values: Object.fromEntries(valuesOf(mine)), because: mine.source },
  }
}
