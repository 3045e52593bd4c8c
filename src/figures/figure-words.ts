import type { UnitSystem } from '../units/show-length.ts'
import { type FigureRow, valuesOf } from './figure.ts'

/** A figure's value in words, inch and metric where they differ: `1 in or 25 mm`, `750 kg/m3`. */
export function valueWords(row: FigureRow): string {
  const unit = 'unit' in row && row.unit !== '1' ? ` ${row.unit}` : ''
  const values = valuesOf(row).map(([, value]) => `${value}${unit}`)
  return [...new Set(values)].join(' or ')
}

const KNOWN: Readonly<Record<FigureRow['known'], string>> = {
  read: 'read there',
  memory: 'from memory',
  practice: '',
  invented: '',
  yours: '',
}

/** Where a figure comes from: source, edition, section, region, and how it is known. */
export const sourceWords = ({ source, edition, section, region, known }: FigureRow): string =>
  [source, edition, section, region, KNOWN[known]].filter((text) => text !== undefined && text !== '').join(', ')

/** The value a job of these units reckons with: `1 1/4 in`. */
export function valueWordsIn(row: FigureRow, units: UnitSystem): string {
  const values = valuesOf(row)
  const chosen = values.find(([field]) => field.startsWith(units)) ?? values[0]
  const unit = 'unit' in row && row.unit !== '1' ? ` ${row.unit}` : ''
  return chosen === undefined ? '' : `${chosen[1]}${unit}`
}

/** Families of figures that concern money: no paper of a helper shows them. */
const MONEY = ['price', 'money', 'buy', 'pack']

export const isAboutMoney = ({ id }: Pick<FigureRow, 'id'>): boolean => MONEY.includes(id.split('.')[0] ?? '')
