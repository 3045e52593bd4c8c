/** A new random id of lower-case letters and digits, so many characters long. */
export type RandomId = (letters: number) => string
