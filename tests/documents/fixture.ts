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

/** Every file of the documents a plan needs. */
export async function allFiles(plan: Plan): Promise<readonly PacketFile[]> {
  const files: PacketFile[] = []
  for (const document of DOCUMENTS) {
    if (document.needed(plan)) files.push(...(await document.write(plan, ASSETS, STAMP)))
  }
  return files
}
