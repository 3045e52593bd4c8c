import { randomBytes } from 'node:crypto'
import type { RandomId } from '../random-id.ts'

/** Random lower-case hexadecimal. */
export const nodeRandomId: RandomId = (letters) => randomBytes(letters).toString('hex').slice(0, letters)
