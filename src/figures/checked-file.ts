import type * as z from 'zod'

/**
 * What a file of `shared` holds, checked by its schema.
 * Throws with file, row and field: `shared/coatings.json, systems, row 3 (masonry-acrylic), layers 1 wetMicrons: …`.
 */
export function checkedFile<T>(file: string, schema: z.ZodType<T>, content: unknown): T {
  const read = schema.safeParse(content)
  if (read.success) return read.data
  const faults = read.error.issues.map((issue) => `${file}, ${placeOf(issue.path, content)}: ${wordsOf(issue)}`)
  throw new Error(faults.join('\n'))
}

/** The way to a value: a place in a list is named by its row and the row's id. */
function placeOf(path: readonly PropertyKey[], content: unknown): string {
  const [key, ...rest] = path
  if (key === undefined) return 'the file'
  const inside = valueAt(content, key)
  const name = typeof key === 'number' ? `row ${key + 1}${idOf(inside)}` : `field ${String(key)}`
  return rest.length === 0 ? name : `${name}, ${placeOf(rest, inside)}`
}

const valueAt = (content: unknown, key: PropertyKey): unknown =>
  typeof content === 'object' && content !== null
    ? Object.entries(content).find(([k]) => k === String(key))?.[1]
    : undefined

const idOf = (row: unknown): string => {
  const id = valueAt(row, 'id')
  return typeof id === 'string' ? ` (${id})` : ''
}

const wordsOf = (issue: z.core.$ZodIssue): string =>
  issue.code === 'unrecognized_keys' ? `${issue.keys.join(', ')} has no place here.` : issue.message
