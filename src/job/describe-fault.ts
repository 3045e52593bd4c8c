import type * as z from 'zod'
import type { Entry, Field, LengthRange } from '../things/field.ts'
import type { Length } from '../units/length.ts'
import { showLengthWithUnit } from '../units/show-length.ts'
import { fieldById } from './fields.ts'
import type { JsonDocument } from './read-json.ts'

type Issue = z.core.$ZodIssue

/** One fault of a job file in words: `line 14, choices.a.plinth (plinth height): 12 is not allowed; a length from 1 in to 12 in.` */
export function describeFault(issue: Issue, document: JsonDocument): readonly string[] {
  const path = issue.path.map((step) => (typeof step === 'number' ? step : String(step)))
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map(
      (key) => `${place(document, [...path, key])}: nichework has no such entry. Take it out, or check its spelling.`,
    )
  }
  const field = fieldAt(path)
  // What is wrong with a person's own figure is said where it is checked.
  if (issue.code === 'custom' && field === undefined) return [`${place(document, path)}: ${issue.message}`]
  const named = field === undefined ? '' : ` (${field.short})`
  const allowed = field === undefined ? expectedWords(issue) : allowedWords(field.entry)
  return [
    `${place(document, path)}${named}: ${shown(valueAt(document.value, path))} does not fit here. It takes ${allowed}.`,
  ]
}

const place = (document: JsonDocument, path: readonly (string | number)[]): string =>
  `line ${document.lineAt(path)}, ${path.length === 0 ? 'the whole file' : path.map((step) => (step === '' ? '""' : step)).join('.')}`

/** Answers stand at section, place, question. */
const fieldAt = ([section, , id]: readonly (string | number)[]): Field | undefined =>
  section === 'facts' || section === 'choices' || section === 'private' ? fieldById(String(id)) : undefined

function valueAt(value: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>(
    (at, step) =>
      typeof at === 'object' && at !== null ? Object.entries(at).find(([key]) => key === String(step))?.[1] : undefined,
    value,
  )
}

const LONGEST_SHOWN = 60
function shown(value: unknown): string {
  const text = value === undefined ? 'nothing' : JSON.stringify(value)
  return text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)} …` : text
}

const TYPES: Readonly<Record<string, string>> = {
  object: 'named entries between { and }',
  record: 'named entries between { and }',
  array: 'a list between [ and ]',
  string: 'a text in quotes',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
}

/** What the frame of a job file takes at a place that is not an answer. */
function expectedWords(issue: Issue): string {
  if (issue.code === 'invalid_type') return TYPES[issue.expected] ?? issue.expected
  if (issue.code === 'invalid_format' && issue.format === 'date') return 'a day written 2026-12-10'
  if (issue.code === 'invalid_format') return 'small letters, figures and hyphens, 4 to 40 of them'
  if (issue.code === 'too_small') return `${issue.minimum} or more`
  if (issue.code === 'too_big') return `${issue.maximum} at most`
  return 'what nichework itself writes there'
}

/** What an entry takes, as it stands in a job file (lengths in nanometres, money in cents). */
function allowedWords(entry: Entry): string {
  switch (entry.kind) {
    case 'length':
      return `a length ${rangeWords(entry.range)}`
    case 'lengths':
      return `${countWords(entry)} lengths, each ${rangeWords(entry.range)}`
    case 'table':
      return `${countWords(entry)} rows of ${entry.columns.map((column) => column.id).join(', ')}`
    case 'bays':
      return 'a list of bays, each with its own id (a, b …) and a kind: alcove, breast or flat'
    case 'choice':
      return `one of ${entry.options.map((option) => `"${option.id}"`).join(', ')}`
    case 'yes-no':
      return 'true or false'
    case 'text':
      return `a text of at most ${entry.most} letters`
    case 'money':
      return 'whole cents, 0 or more (12.50 is written 1250)'
    case 'count':
      return `a whole number from ${entry.least} to ${entry.most}`
    case 'number':
      return `a number from ${entry.least} to ${entry.most} (${entry.unit})`
    case 'hours':
      return `hours from ${entry.least} to ${entry.most}`
    case 'percent':
      return `a percentage from ${entry.least} to ${entry.most}`
    case 'day':
      return 'a day written 2026-12-10'
  }
}

const countWords = ({ least, most }: { readonly least: number; readonly most: number }): string =>
  least === most ? String(least) : `${least} to ${most}`

function rangeWords({ inch, metric }: LengthRange): string {
  const between = ([least, most]: readonly [Length, Length], units: 'inch' | 'metric') =>
    `${showLengthWithUnit(least, units)} to ${showLengthWithUnit(most, units)}`
  return `from ${between(inch, 'inch')} (${between(metric, 'metric')}), in whole nanometres: 1 in is 25400000, 1 mm is 1000000`
}
