import { noteRead } from '../things/formula.ts'
import type { Length } from '../units/length.ts'
import type { UnitSystem } from '../units/show-length.ts'
import type { FigureRow } from './figure.ts'
import { readFigureLength } from './figure-length.ts'
import { type OwnFigures, ownRows } from './own-figures.ts'
import { publishedRows } from './published.ts'

/** The figures of one job: published rows with the person's own laid over them, read in the job's unit system. */
export interface Figures {
  readonly units: UnitSystem
  /** A length by its id, `filler.nominal`. Throws on an id that is not a length row of `shared/figures`. */
  readonly length: (id: string) => Length
  /** A plain number by its id, `density.mdf`, in the row's unit. Throws likewise. */
  readonly number: (id: string) => number
  /** The whole row, for its source. */
  readonly row: (id: string) => FigureRow
  /** The rows that are the person's own in this job, in the order of their ids. */
  readonly own: readonly FigureRow[]
}

/** Lengths of published rows, read once a process. What is a person's own is read for each job anew. */
const published: Readonly<Record<UnitSystem, Map<string, Length>>> = { inch: new Map(), metric: new Map() }

/** Figures in a unit system: the published ones, and over them what the job carries of the person's own. */
export function figuresIn(units: UnitSystem, own: OwnFigures = {}): Figures {
  const rows = publishedRows()
  const mine = ownRows(own, rows)
  const row = (id: string): FigureRow => {
    const found = mine.get(id) ?? rows.get(id)
    if (found === undefined) throw new Error(`No figure ${id} in shared/figures.`)
    return found
  }
  const noted = <V extends Length | number>(id: string, value: V): V => {
    noteFigure(row(id), value)
    return value
  }
  return {
    units,
    row,
    own: [...mine.values()],
    length: (id) => noted(id, mine.has(id) ? lengthOf(row(id), units) : publishedLength(row(id), units)),
    number: (id) => noted(id, numberOf(row(id), units)),
  }
}

function publishedLength(row: FigureRow, units: UnitSystem): Length {
  const known = published[units].get(row.id) ?? lengthOf(row, units)
  published[units].set(row.id, known)
  return known
}

/** A row that was read, with the place it comes from, for whoever asks where a number is from. */
const noteFigure = (row: FigureRow, result: Length | number): void =>
  noteRead(() => ({ kind: 'figure', id: row.id, about: '', plain: row.says, source: citation(row), result }))

/** Where a row comes from: source, edition, section, region. */
export const citation = ({ source, edition, section, region }: FigureRow): string =>
  [source, edition, section, region].filter((text) => text !== undefined).join(', ')

function lengthOf(row: FigureRow, units: UnitSystem): Length {
  if ('inch' in row) return readFigureLength(units === 'inch' ? row.inch : row.metric)
  if ('length' in row) return readFigureLength(row.length)
  throw new Error(`The figure ${row.id} is not a length.`)
}

function numberOf(row: FigureRow, units: UnitSystem): number {
  if ('inchValue' in row) return units === 'inch' ? row.inchValue : row.metricValue
  if ('value' in row) return row.value
  throw new Error(`The figure ${row.id} is not a plain number.`)
}
