import * as z from 'zod'
import { nearestWords } from '../things/nearest.ts'
import { type FigureRow, type ValueField, valuesOf } from './figure.ts'
import { ownValueFault } from './own-value.ts'
import { publishedRows } from './published.ts'

const MOST_LETTERS = 200

/** One figure of a person's own: the value in the field the published row has it in, and why. */
const ownFigure = z.strictObject({
  inch: z.string().optional(),
  metric: z.string().optional(),
  length: z.string().optional(),
  inchValue: z.number().optional(),
  metricValue: z.number().optional(),
  value: z.number().optional(),
  /** Said for the reader; must be the unit of the published row. */
  unit: z.string().optional(),
  because: z.string().min(1).max(MOST_LETTERS),
})
export type OwnFigure = z.infer<typeof ownFigure>

/** A person's own figures by the ids of the published ones: `{"filler.nominal": {"inch": "1 1/4 in", "because": "…"}}`. */
export type OwnFigures = Readonly<Record<string, OwnFigure>>

/** The schema of `own-figures.json`, and of the figures a job carries. Every fault names the figure and what would be right. */
export const ownFiguresSchema = z.record(z.string(), ownFigure).superRefine((own, context) => {
  for (const [id, figure] of Object.entries(own)) {
    for (const message of ownFigureFaults(id, figure)) context.addIssue({ code: 'custom', path: [id], message })
  }
})

/** What is wrong with one figure of a person's own, in words; nothing when it can be used. */
function ownFigureFaults(id: string, figure: OwnFigure): readonly string[] {
  const row = publishedRows().get(id)
  if (row === undefined) return [`there is no figure of this name.${nearestId(id)} nichework figures lists all.`]
  const { because: _because, unit, ...values } = figure
  const given = Object.entries(values) as readonly (readonly [ValueField, string | number])[]
  if (given.length === 0) return [`it says no value. ${asWritten(row)}`]
  const ownUnit = 'unit' in row ? row.unit : undefined
  if (unit !== undefined && unit !== ownUnit)
    return [
      ownUnit === undefined
        ? `the unit of a length stands in the text. ${asWritten(row)}`
        : `"${unit}" is not its unit: this figure is in ${ownUnit}.`,
    ]
  return given.flatMap(([field, value]) => {
    const published = valuesOf(row).find(([name]) => name === field)
    return published === undefined
      ? [`"${field}" is not how it is written. ${asWritten(row)}`]
      : ownValueFault(row, field, { published: published[1], own: value })
  })
}

function nearestId(id: string): string {
  const near = nearestWords(id, [...publishedRows().keys()])
  return near.length === 0 ? '' : ` Nearest: ${near.join(', ')}.`
}

/** Ids of the figures that are not the same in both, in order. */
export const changedOwn = (before: OwnFigures, after: OwnFigures): readonly string[] =>
  [...new Set([...Object.keys(before), ...Object.keys(after)])]
    .toSorted()
    .filter((id) => !isSame(before[id], after[id]))

const isSame = (a: OwnFigure | undefined, b: OwnFigure | undefined): boolean =>
  a !== undefined &&
  b !== undefined &&
  [...new Set([...Object.keys(a), ...Object.keys(b)])].every((key) => valueIn(a, key) === valueIn(b, key))

const valueIn = (figure: OwnFigure, key: string): unknown => Object.entries(figure).find(([name]) => name === key)?.[1]

/** How a figure is written in `own-figures.json`, shown with its published value. */
export const asWritten = (row: FigureRow): string =>
  `Write it: "${row.id}": {${valuesOf(row)
    .map(([field, value]) => `"${field}": ${JSON.stringify(value)}`)
    .join(', ')}, "because": "why"}`

/** The rows of a person's own, in the order of their ids: the published ones with their values and their reason. */
export const ownRows = (own: OwnFigures, published: ReadonlyMap<string, FigureRow>): ReadonlyMap<string, FigureRow> =>
  new Map(
    Object.keys(own)
      .toSorted()
      .flatMap((id) => {
        const row = published.get(id)
        const figure = own[id]
        return row === undefined || figure === undefined ? [] : [[id, ownRow(row, figure)] as const]
      }),
  )

function ownRow(row: FigureRow, figure: OwnFigure): FigureRow {
  const { edition: _edition, section: _section, region: _region, ...kept } = row
  const mine = { known: 'yours', source: `your setting: ${figure.because}` } as const
  if ('inch' in kept) return { ...kept, ...mine, inch: figure.inch ?? kept.inch, metric: figure.metric ?? kept.metric }
  if ('length' in kept) return { ...kept, ...mine, length: figure.length ?? kept.length }
  if ('inchValue' in kept) {
    const { inchValue = kept.inchValue, metricValue = kept.metricValue } = figure
    return { ...kept, ...mine, inchValue, metricValue }
  }
  return { ...kept, ...mine, value: figure.value ?? kept.value }
}
