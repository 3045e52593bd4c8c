import { readFileSync } from 'node:fs'
import type { PacketFile } from '../../src/documents/document.ts'
import { DOCUMENTS } from '../../src/documents/list.ts'
import { readAnswers } from '../../src/interview/answers.ts'
import { studs } from '../../src/job/chapters/wall.ts'
import { type Job, withAnswer } from '../../src/job/job.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import { NOT_MEASURED } from '../../src/things/field.ts'
import { day } from '../../src/units/day.ts'
import { ASSETS, STAMP } from './assets.ts'

/** A demo job (invented) as it is typed. */
export function demoJob(name: 'alcoves-inch' | 'niche-metric'): Job {
  const text = readFileSync(new URL(`../../demo/${name}/answers.json`, import.meta.url), 'utf8')
  return readAnswers(JSON.parse(text), { id: 'documents-test', today: day('2026-11-20') }).job
}

export const inchPlan = (): Plan => makePlan(demoJob('alcoves-inch'), 'quick')
export const metricPlan = (): Plan => makePlan(demoJob('niche-metric'), 'quick')

/** The same wall with the studs of its last alcove not found yet. */
export const heldPlan = (): Plan => makePlan(withAnswer(demoJob('alcoves-inch'), studs, 'c', NOT_MEASURED), 'quick')

type Answers = Readonly<Record<string, unknown>>

/** The alcove demo's answers given for another row of bays: `from` names the demo bay each takes its measures from. */
function wallOf(kinds: string, from: string, more: Answers = {}): Plan {
  const text = readFileSync(new URL('../../demo/alcoves-inch/answers.json', import.meta.url), 'utf8')
  const demo: { readonly answers: Answers } = JSON.parse(text)
  const all = Object.entries(demo.answers)
  const bays = [...from].flatMap((bay, i) =>
    all
      .filter(([key]) => key.startsWith(`${bay}.`))
      .map(([key, value]) => [`${'abcd'[i] ?? ''}.${key.slice(2)}`, value] as const),
  )
  const job = all.filter(([key]) => key.startsWith('job.'))
  const answers = { ...Object.fromEntries([...job, ...bays]), 'job.bays': kinds, ...more }
  return makePlan(readAnswers({ ...demo, answers }, { id: 'documents-test', today: day('2026-11-20') }).job, 'quick')
}

export const fourBayPlan = (): Plan => wallOf('alcove breast alcove alcove', 'abcc')
export const breastPlan = (): Plan => wallOf('breast', 'b')
export const flatPlan = (): Plan => wallOf('flat', 'a', { 'a.flatLength': '90', 'a.flatEnds': 'both' })

/** Every file of the documents a plan needs. */
export async function allFiles(plan: Plan): Promise<readonly PacketFile[]> {
  const files: PacketFile[] = []
  for (const document of DOCUMENTS) {
    if (document.needed(plan)) files.push(...(await document.write(plan, ASSETS, STAMP)))
  }
  return files
}
