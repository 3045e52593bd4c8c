import type { Option } from '../things/field.ts'
import { answer, type Entered, refused } from './entered.ts'

/** A choice by its word, its number in the list, or a beginning that fits one of them only. */
export function enterChoice(text: string, options: readonly Option[]): Entered {
  const found = matchOption(text, options)
  if (found.kind === 'one') return answer(found.option.id, found.option.says)
  const way = `Type its number, 1 to ${options.length}, or how it begins.`
  if (found.kind === 'several')
    return refused(`"${text}" fits ${found.options.map((o) => o.says).join(' and ')}. ${way}`)
  return refused(`"${text.slice(0, 40)}" is not in the list. ${way}`)
}

const YES_NO: readonly Option[] = [
  { id: 'yes', says: 'yes' },
  { id: 'no', says: 'no' },
]

export function enterYesNo(text: string): Entered {
  const found = matchOption(text, YES_NO)
  return found.kind === 'one' ? answer(found.option.id === 'yes', found.option.says) : refused('Type yes or no.')
}

export type OptionMatch =
  | { readonly kind: 'one'; readonly option: Option }
  | { readonly kind: 'several'; readonly options: readonly Option[] }
  | { readonly kind: 'none' }

/** Whole words first, then the number in the list, then beginnings, then beginnings of a later word. */
export function matchOption(text: string, options: readonly Option[]): OptionMatch {
  const typed = plain(text)
  if (typed === '') return { kind: 'none' }
  const whole = options.find((o) => plain(o.id) === typed || plain(o.says) === typed)
  const numbered = /^\d{1,2}$/.test(typed) ? options[Number(typed) - 1] : undefined
  const sure = whole ?? numbered
  if (sure !== undefined) return { kind: 'one', option: sure }
  const begins = options.filter((o) => plain(o.id).startsWith(typed) || plain(o.says).startsWith(typed))
  if (begins.length > 0) return oneOrSeveral(begins)
  return oneOrSeveral(options.filter((o) => plain(o.says).includes(` ${typed}`)))
}

function oneOrSeveral(options: readonly Option[]): OptionMatch {
  const [option] = options
  if (option === undefined) return { kind: 'none' }
  return options.length === 1 ? { kind: 'one', option } : { kind: 'several', options }
}

/** Case, spaces, hyphens and the shape of an apostrophe do not matter. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/[\s-]+/g, ' ')
    .trim()
