import * as z from 'zod'
import { type Column, type Field, type LengthRange, type Like, NOT_MEASURED, type Option } from '../things/field.ts'
import type { Bay } from '../things/place.ts'
import type { Day } from '../units/day.ts'
import { inches, type Length, millimetres } from '../units/length.ts'
import type { Money } from '../units/money.ts'

/** What a chapter writes about a question; the rest has defaults or follows from how it is typed. */
export type Asked<T> = Pick<Field<T>, 'id' | 'chapter' | 'section' | 'each' | 'asks' | 'short' | 'why'> &
  Partial<Pick<Field<T>, 'help' | 'missing' | 'when'>>

const ALWAYS = () => true

const field = <T>(asked: Asked<T>, schema: z.ZodType<T>, entry: Field['entry']): Field<T> => ({
  help: '',
  missing: 'suggest',
  when: ALWAYS,
  ...asked,
  schema,
  entry,
})

const lengthSchema: z.ZodType<Length> = z.int() as unknown as z.ZodType<Length>

/** Range in both systems: `upTo(240, 6000)` = 0 to 240 in, 0 to 6000 mm. */
export const from0 = (inch: number, metric: number): LengthRange => range(0, inch, 0, metric)
export const range = (inchLeast: number, inchMost: number, metricLeast: number, metricMost: number): LengthRange => ({
  inch: [inches(inchLeast), inches(inchMost)],
  metric: [millimetres(metricLeast), millimetres(metricMost)],
})

export const lengthField = (asked: Asked<Length>, allowed: LengthRange): Field<Length> =>
  field(asked, lengthWithin(allowed), { kind: 'length', range: allowed })

/** The widest of the two systems' ranges: a job file may be in either. */
function lengthWithin(allowed: LengthRange): z.ZodType<Length> {
  const least = Math.min(allowed.inch[0], allowed.metric[0])
  const most = Math.max(allowed.inch[1], allowed.metric[1])
  return z.int().min(least).max(most) as unknown as z.ZodType<Length>
}

export const lengthsField = (
  asked: Asked<readonly Length[]>,
  allowed: LengthRange,
  many: { readonly least: number; readonly most: number; readonly labels?: readonly string[] },
): Field<readonly Length[]> =>
  field(asked, z.array(lengthWithin(allowed)).min(many.least).max(many.most).readonly(), {
    kind: 'lengths',
    range: allowed,
    ...many,
  })

/** A table row: each column's cell by the column's id; a cell may be absent where the column is not needed. */
export type TableRow<K extends string> = { readonly [C in K]?: Length | string | undefined }

export const tableField = <R extends object>(
  asked: Asked<readonly R[]>,
  row: z.ZodType<R>,
  columns: readonly Column[],
  many: { readonly least: number; readonly most: number },
): Field<readonly R[]> =>
  field(asked, z.array(row).min(many.least).max(many.most).readonly(), { kind: 'table', columns, ...many })

export const baysField = (asked: Asked<readonly Bay[]>): Field<readonly Bay[]> =>
  field(
    asked,
    z
      .array(z.strictObject({ id: z.string().regex(/^[a-z]{1,2}$/), kind: z.enum(['alcove', 'breast', 'flat']) }))
      .min(1)
      .max(12)
      .readonly()
      .refine((bays) => new Set(bays.map((b) => b.id)).size === bays.length, 'each bay has its own id'),
    { kind: 'bays' },
  )

export const countField = (asked: Asked<number>, least: number, most: number): Field<number> =>
  field(asked, z.int().min(least).max(most), { kind: 'count', least, most })

export const choiceField = <const O extends Readonly<Record<string, string>>>(
  asked: Asked<keyof O & string>,
  options: O,
): Field<keyof O & string> => {
  const list: readonly Option[] = Object.entries(options).map(([id, says]) => ({ id, says }))
  const ids = list.map((o) => o.id) as [string, ...string[]]
  return field(asked, z.enum(ids) as unknown as z.ZodType<keyof O & string>, { kind: 'choice', options: list })
}

export const yesNoField = (asked: Asked<boolean>): Field<boolean> => field(asked, z.boolean(), { kind: 'yes-no' })

export const textField = (asked: Asked<string>, most: number, needed: boolean): Field<string> =>
  field(asked, z.string().max(most), { kind: 'text', most, needed })

const MOST_MONEY = 1e8
export const moneyField = (asked: Asked<Money>): Field<Money> =>
  field(asked, z.int().min(0).max(MOST_MONEY) as unknown as z.ZodType<Money>, { kind: 'money' })

export const hoursField = (asked: Asked<number>, least: number, most: number): Field<number> =>
  field(asked, z.number().min(least).max(most), { kind: 'hours', least, most })

export const percentField = (asked: Asked<number>, least: number, most: number): Field<number> =>
  field(asked, z.number().min(least).max(most), { kind: 'percent', least, most })

export const numberField = (asked: Asked<number>, unit: string, least: number, most: number): Field<number> =>
  field(asked, z.number().min(least).max(most), { kind: 'number', unit, least, most })

export const dayField = (asked: Asked<Day>): Field<Day> =>
  field(asked, z.iso.date() as unknown as z.ZodType<Day>, { kind: 'day' })

/** A column of lengths, with a plausible reading for the example. */
export const lengthColumn = (id: string, says: string, needed: Needed, like: Like): Column => ({
  id,
  says,
  needed: needed === 'needed',
  entry: { kind: 'length', signed: false, like },
})

/** The same for readings that may lie on either side of nothing: how far a wall leans. */
export const signedColumn = (id: string, says: string, needed: Needed, like: Like): Column => ({
  id,
  says,
  needed: needed === 'needed',
  entry: { kind: 'length', signed: true, like },
})

type Needed = 'needed' | 'or a dash'

/** A column answered by one of a few words. */
export const wordColumn = (id: string, says: string, options: readonly string[]): Column => ({
  id,
  says,
  needed: true,
  entry: { kind: 'choice', options: options.map((o) => ({ id: o, says: o.replace('-', ' ') })) },
})

/** A column of whole numbers: how many, or a year. `like` is a plausible one for the example. */
export const countColumn = (
  id: string,
  says: string,
  needed: Needed,
  count: { readonly least: number; readonly most: number; readonly like: string },
): Column => ({ id, says, needed: needed === 'needed', entry: { kind: 'count', ...count } })

/** Schema of a table cell. */
export const cell = {
  length: lengthSchema,
  count: (least: number, most: number): z.ZodType<number> => z.int().min(least).max(most),
  word: <const W extends readonly [string, ...string[]]>(words: W): z.ZodType<W[number]> =>
    z.enum(words) as unknown as z.ZodType<W[number]>,
}

/** The schema of what a job file holds for a field: its value, or "not measured" where that is a true answer. */
export const stored = (f: Field): z.ZodType =>
  f.missing === 'suggest' ? f.schema : z.union([f.schema, z.literal(NOT_MEASURED)])
