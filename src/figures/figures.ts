import { noteRead } from '../things/formula.ts'
import { inches, type Length, millimetres } from '../units/length.ts'
import type { UnitSystem } from '../units/show-length.ts'
import type { FigureRow } from './figure.ts'
import { publishedRows } from './published.ts'

/** The figures of one job: published rows, read in the job's unit system. */
export interface Figures {
  readonly units: UnitSystem
  /** A length by its id, `filler.nominal`. Throws on an id that is not a length row of `shared/figures`. */
  readonly length: (id: string) => Length
  /** A plain number by its id, `density.mdf`, in the row's unit. Throws likewise. */
  readonly number: (id: string) => number
  /** The whole row, for its source. */
  readonly row: (id: string) => FigureRow
}

let checked: ReadonlyMap<string, FigureRow> | undefined
const read: Readonly<Record<UnitSystem, Map<string, Length>>> = { inch: new Map(), metric: new Map() }

/** Published figures in a unit system. The files are checked once a process, and a length is read once. */
export function figuresIn(units: UnitSystem): Figures {
  checked ??= publishedRows()
  const rows = checked
  const lengths = read[units]
  const row = (id: string): FigureRow => {
    const found = rows.get(id)
    if (found === undefined) throw new Error(`No figure ${id} in shared/figures.`)
    return found
  }
  const length = (id: string): Length => {
    const known = lengths.get(id) ?? lengthOf(row(id), units)
    lengths.set(id, known)
    noteFigure(row(id), known)
    return known
  }
  const number = (id: string): number => {
    const value = numberOf(row(id), units)
    noteFigure(row(id), value)
    return value
  }
  return { units, row, length, number }
}

/** A row that was read, with the place it comes from, for whoever asks where a number is from. */
const noteFigure = ({ id, says, source, edition, section }: FigureRow, result: Length | number): void =>
  noteRead(() => ({
    kind: 'figure',
    id,
    about: '',
    plain: says,
    source: [source, edition, section].filter((text) => text !== undefined).join(', '),
    result,
  }))

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

const WRITTEN = /^(?:(\d+(?:\.\d+)?) )?(?:(\d+)\/(\d+) )?(in|mm)$/

/** Reads a length as the figure files write it: `1 1/4 in`, `3/8 in`, `12.7 mm`. */
export function readFigureLength(text: string): Length {
  const match = WRITTEN.exec(text)
  if (match === null) throw new Error(`"${text}" is not a length of shared/figures.`)
  const value = Number(match[1] ?? 0) + Number(match[2] ?? 0) / Number(match[3] ?? 1)
  return match[4] === 'in' ? inches(value) : millimetres(value)
}
