const NUMBERED = /^(.*?)(\d+)$/

interface Run {
  readonly stem: string
  readonly first: number
  readonly last: number
}

/** Marks in a row said at once: `R-C1 to R-C9`, `L1-S1, L1-S2`. Two in a row stay two. */
export function markRanges(marks: readonly string[]): string {
  const runs: (Run | string)[] = []
  for (const mark of [...new Set(marks)]) {
    const [, stem, digits] = NUMBERED.exec(mark) ?? []
    const before = runs[runs.length - 1]
    if (stem === undefined || digits === undefined) runs.push(mark)
    else if (typeof before === 'object' && before.stem === stem && before.last + 1 === Number(digits)) {
      runs[runs.length - 1] = { ...before, last: before.last + 1 }
    } else runs.push({ stem, first: Number(digits), last: Number(digits) })
  }
  return runs.map(saidRun).join(', ')
}

function saidRun(run: Run | string): string {
  if (typeof run === 'string') return run
  const first = `${run.stem}${run.first}`
  if (run.first === run.last) return first
  return `${first}${run.last === run.first + 1 ? ', ' : ' to '}${run.stem}${run.last}`
}
