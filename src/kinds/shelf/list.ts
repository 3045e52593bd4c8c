import { hollowShelf } from './hollow.ts'

/** Every kind of floating shelf. Add one = one file + one line here. */
export const SHELVES = { hollow: hollowShelf } as const
export type ShelfKindId = keyof typeof SHELVES
