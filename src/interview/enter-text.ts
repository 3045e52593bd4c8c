import type { Entry } from '../things/field.ts'
import { cleanText } from './clean-text.ts'
import { answer, type Entered, refused } from './entered.ts'

/** Free text, without control characters. `none` empties an optional one. */
export function enterText(typed: string, entry: Extract<Entry, { kind: 'text' }>): Entered {
  if (typed.length > entry.most * 20) return refused(tooLong(entry.most))
  const { text, note } = cleanText(typed)
  if (text === '') return refused(entry.needed ? 'A few words are needed here.' : 'Nothing is left to keep of that.')
  if (!entry.needed && text.toLowerCase() === 'none') return answer(undefined, 'none')
  return text.length > entry.most ? refused(tooLong(entry.most)) : answer(text, text, note)
}

const tooLong = (most: number): string => `Too long for this question (limit ${most} characters).`
