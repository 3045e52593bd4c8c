/** The known name with the fewest letters changed, when it is near enough to be meant. */
export function nearestName(typed: string, known: readonly string[]): string | undefined {
  const ranked = known
    .map((name) => ({ name, distance: lettersChanged(typed, name) }))
    .sort((a, b) => a.distance - b.distance || (a.name < b.name ? -1 : 1))
  const best = ranked[0]
  return best !== undefined && best.distance <= Math.max(2, Math.floor(typed.length / 2)) ? best.name : undefined
}

/** Letters put in, taken out or changed to come from one word to the other (Levenshtein 1966). */
function lettersChanged(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i)
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i]
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same))
    }
    row = next
  }
  return row[b.length] ?? 0
}
