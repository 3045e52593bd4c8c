const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']

/** `three`, up to twelve; figures beyond. */
export const inWords = (count: number): string => WORDS[count] ?? String(count)

/** The number a word stands for: `two`, `none`, `zero`; undefined when it is not such a word. */
export function fromWords(word: string): number | undefined {
  if (['none', 'zero', 'nil'].includes(word)) return 0
  const at = WORDS.indexOf(word)
  return at < 0 ? undefined : at
}
