/** A rectangle on a sheet, whole numbers of one unit. */
export interface Lying {
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
}

/**
 * What is wrong with a sheet, found without the program's own code: parts outside it, parts nearer than a kerf,
 * or no through-cut that frees them. Empty when it can be sawn.
 */
export function faultsOf(parts: readonly Lying[], sheet: Lying, kerf: number): readonly string[] {
  const outside = parts.filter(
    (p) =>
      p.x < sheet.x ||
      p.y < sheet.y ||
      p.x + p.length > sheet.x + sheet.length ||
      p.y + p.width > sheet.y + sheet.width,
  )
  const near = parts.flatMap((a, n) => parts.slice(0, n).filter((b) => !apart(a, b, kerf)))
  return [
    ...outside.map((p) => `outside: ${JSON.stringify(p)}`),
    ...near.map((p) => `nearer than the kerf: ${JSON.stringify(p)}`),
    ...(near.length === 0 && !separable(parts, kerf) ? ['no through-cut frees the parts'] : []),
  ]
}

const apart = (a: Lying, b: Lying, kerf: number): boolean =>
  a.x >= b.x + b.length + kerf ||
  b.x >= a.x + a.length + kerf ||
  a.y >= b.y + b.width + kerf ||
  b.y >= a.y + a.width + kerf

/** Brute force on purpose: tries each edge as a cut, in both directions, then both halves. */
function separable(parts: readonly Lying[], kerf: number): boolean {
  if (parts.length < 2) return true
  for (const [from, size] of [
    ['x', 'length'],
    ['y', 'width'],
  ] as const) {
    for (const part of parts) {
      const cut = part[from] + part[size]
      const near = parts.filter((p) => p[from] + p[size] <= cut)
      const far = parts.filter((p) => p[from] >= cut + kerf)
      if (far.length > 0 && near.length + far.length === parts.length) {
        // A cut that harms no part never spoils a later one: the first found is enough.
        return separable(near, kerf) && separable(far, kerf)
      }
    }
  }
  return false
}
