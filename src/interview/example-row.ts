import type { Column } from '../things/field.ts'
import type { UnitSystem } from '../units/show-length.ts'

/** A row of a table as one would type it: `outlet, back, 9, 12, 2 3/4, 4 1/2, keep`. */
export const exampleRow = (columns: readonly Column[], units: UnitSystem): string =>
  columns.map(({ entry }) => exampleCell(entry, units)).join(', ')

function exampleCell(entry: Column['entry'], units: UnitSystem): string {
  switch (entry.kind) {
    case 'length':
      return entry.like[units]
    case 'count':
      return entry.like
    case 'choice':
      return entry.options[0]?.says ?? ''
  }
}

/** The columns answered by a word, each with all its words: `outlet · switch · data`. */
export const columnWords = (
  columns: readonly Column[],
): readonly { readonly column: string; readonly words: string }[] =>
  columns.flatMap(({ says, entry }) =>
    entry.kind === 'choice' ? [{ column: says, words: entry.options.map((o) => o.says).join(' · ') }] : [],
  )
