import { readFileSync, writeFileSync } from 'node:fs'
import { readAnswers } from '../interview/answers.ts'
import { day } from '../units/day.ts'

/** Writes `job.json` of each demo from its `answers.json`: run after a question or a demo answer has changed. */
for (const demo of ['alcoves-inch', 'niche-metric']) {
  const folder = new URL(`../../demo/${demo}/`, import.meta.url)
  const typed: unknown = JSON.parse(readFileSync(new URL('answers.json', folder), 'utf8'))
  const { job, faults } = readAnswers(typed, { id: `demo-${demo}`, today: day('2026-11-20') })
  if (faults.length > 0) throw new Error(faults.join('\n'))
  writeFileSync(new URL('job.json', folder), `${JSON.stringify(job, null, 2)}\n`)
}
