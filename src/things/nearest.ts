/** The known words nearest to a mistyped one, nearest first, at most three; none when all are far away. */
export function nearestWords(typed: string, known: readonly string[]): readonly string[] {
  const far = Math.max(2, Math.ceil(typed.length / 3))
  return known
    .map((word) => ({ word, distance: editDistance(typed.toLowerCase(), word.toLowerCase()) }))
    .filter(({ distance }) => distance <= far)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, 3)
    .map(({ word }) => word)
}

/** Letters to put in, take out or change (Levenshtein 1966), one row of the table at a time. */
function editDistance(a: string, b: string): number {
  const first = Array.from({ length: b.length + 1 }, (_, i) => i)
  const last = [...a].reduce((above, letter, i) => {
    const row = [i + 1]
    for (let j = 0; j < b.length; j++) {
      const change = (above[j] ?? 0) + (letter === b[j] ? 0 : 1)
      row.push(Math.min(change, (row[j] ?? 0) + 1, (above[j + 1] ?? 0) + 1))
    }
    return row
  }, first)
  return last[b.length] ?? 0
}
