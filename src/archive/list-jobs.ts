import { title } from '../job/chapters/job.ts'
import { answerOf, type Job } from '../job/job.ts'
import { NOT_MEASURED } from '../things/field.ts'
import type { JobSummary } from './job-store.ts'
import { readKeptJob } from './kept-job.ts'
import { newestSave } from './newest-save.ts'
import type { StorePorts } from './store-ports.ts'

const JOB_ID = /^[a-z0-9-]{4,40}$/

/** Every job of the folder, latest saved first. A damaged one is listed too and hides no other. Changes nothing. */
export async function listJobs({ files }: StorePorts, jobs: string): Promise<readonly JobSummary[]> {
  const folders = (await files.list(jobs)).filter(({ name, kind }) => kind === 'folder' && JOB_ID.test(name))
  const found = []
  for (const { name: id } of folders) {
    const { save, damaged, newer, unreadable } = await newestSave(files, `${jobs}/${id}`)
    // A folder whose first save was cut off holds nothing yet.
    if (save === undefined && damaged.length + newer.length + unreadable.length === 0) continue
    found.push({ savedAt: save?.header.savedAt ?? '', summary: summaryOf(id, save?.body) })
  }
  return found.sort((a, b) => (a.savedAt === b.savedAt ? 0 : a.savedAt < b.savedAt ? 1 : -1)).map((f) => f.summary)
}

function summaryOf(id: string, body: string | undefined): JobSummary {
  const damaged = { id, title: id, at: undefined, answers: 0, damaged: true }
  if (body === undefined) return damaged
  try {
    const { job, at } = readKeptJob(body, id)
    const name = answerOf(job, title, 'job')
    return {
      id,
      title: name === undefined || name === NOT_MEASURED ? id : name,
      at,
      answers: answerCount(job),
      damaged: false,
    }
  } catch {
    // What exactly is wrong is said when the job is opened.
    return damaged
  }
}

const answerCount = (job: Job): number =>
  [job.facts, job.choices, job.private]
    .flatMap((section) => Object.values(section))
    .reduce((count, answers) => count + Object.keys(answers ?? {}).length, 0)
