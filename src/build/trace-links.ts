import { readFileSync } from 'node:fs'
import { jobIn, openJson } from '../job/open.ts'
import { missingLinks } from '../plan/trace/missing-links.ts'
import { tracing } from '../plan/trace/tracing.ts'

// Prints which sizes and inputs cannot say where they come from, with how often: `tsx src/build/trace-links.ts demo/*/job.json`.
const counts = new Map<string, number>()
for (const file of process.argv.slice(2)) {
  const job = jobIn(openJson(readFileSync(file), file), file)
  for (const { of, input } of missingLinks(tracing(job))) {
    const line = `${of.replace(/\d+/g, 'n')}  ${input}`
    counts.set(line, (counts.get(line) ?? 0) + 1)
  }
}
for (const [line, count] of [...counts].toSorted()) console.log(`${String(count).padStart(5)}  ${line}`)
