import codes from '../../shared/figures/codes.json' with { type: 'json' }
import fasteners from '../../shared/figures/fasteners.json' with { type: 'json' }
import habits from '../../shared/figures/habits.json' with { type: 'json' }
import loads from '../../shared/figures/loads.json' with { type: 'json' }
import mantel from '../../shared/figures/mantel.json' with { type: 'json' }
import materials from '../../shared/figures/materials.json' with { type: 'json' }
import paintAndCaulk from '../../shared/figures/paint-and-caulk.json' with { type: 'json' }
import prices from '../../shared/figures/prices.json' with { type: 'json' }
import rates from '../../shared/figures/rates.json' with { type: 'json' }
import site from '../../shared/figures/site.json' with { type: 'json' }
import hardware from '../../shared/hardware.json' with { type: 'json' }
import { checkedRow } from './checked-row.ts'
import { coatingRows } from './coating-table.ts'
import { codeRows } from './code-profiles.ts'
import type { FigureRow } from './figure.ts'

interface FigureFile {
  readonly file: string
  readonly rows: readonly object[]
}

/** Every file of figures, in the order they are listed. Add one = one line. */
const FILES: readonly FigureFile[] = [
  { file: 'shared/figures/habits.json', ...habits },
  { file: 'shared/figures/materials.json', ...materials },
  { file: 'shared/figures/loads.json', ...loads },
  { file: 'shared/figures/codes.json', ...codes },
  { file: 'shared/hardware.json', ...hardware },
  { file: 'shared/figures/fasteners.json', ...fasteners },
  { file: 'shared/figures/paint-and-caulk.json', ...paintAndCaulk },
  { file: 'shared/figures/mantel.json', ...mantel },
  { file: 'shared/figures/site.json', ...site },
  { file: 'shared/figures/rates.json', ...rates },
  { file: 'shared/figures/prices.json', ...prices },
]

/** A file of figures with its rows, checked. */
export interface PublishedFile {
  readonly file: string
  readonly rows: readonly FigureRow[]
}

let read: { readonly files: readonly PublishedFile[]; readonly rows: ReadonlyMap<string, FigureRow> } | undefined

/** All published rows by id, checked once a process. Throws with file, row and field when one is not as it must be. */
export const publishedRows = (): ReadonlyMap<string, FigureRow> => published().rows

/** The same rows as they stand in their files. */
export const publishedFiles = (): readonly PublishedFile[] => published().files

function published(): NonNullable<typeof read> {
  if (read === undefined) {
    const checked = FILES.map(({ file, rows }) => ({ file, rows: rows.map((row, at) => checkedRow(file, at, row)) }))
    const files = [
      ...checked,
      { file: 'shared/codes.json', rows: codeRows() },
      { file: 'shared/coatings.json', rows: coatingRows() },
    ]
    read = { files, rows: byId(files) }
  }
  return read
}

function byId(files: readonly PublishedFile[]): ReadonlyMap<string, FigureRow> {
  const rows = new Map<string, FigureRow>()
  for (const { file, rows: list } of files) {
    for (const row of list) {
      if (rows.has(row.id)) throw new Error(`${file}, ${row.id}: this figure stands twice in shared.`)
      rows.set(row.id, row)
    }
  }
  return rows
}
