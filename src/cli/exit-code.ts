/** What the program ends with. 128 + n when a signal ended it. */
export const EXIT = {
  done: 0,
  fault: 1,
  wrongUse: 2,
  stop: 3,
  unreadable: 4,
  cannotWrite: 5,
  unconfirmed: 6,
} as const
export type ExitCode = (typeof EXIT)[keyof typeof EXIT]
