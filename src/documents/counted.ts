const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']

/** `one box`, `three boxes`, `14 doors`: numbers to twelve as words. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${WORDS[count] ?? count} ${count === 1 ? one : many}`
