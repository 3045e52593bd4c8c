import { NOT_MEASURED } from '../things/field.ts'
import type { JobSummary } from './job-store.ts'
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

/**
 * Read without the questions and their schema: the list stands on the screen before those are loaded. The save is as it
 * was written (its hash says so); what else may be wrong in it is said when the job is opened.
 */
function summaryOf(id: string, body: string | undefined): JobSummary {
  const kept = body === undefined ? undefined : entriesOf(parsed(body))
  const job = entriesOf(kept?.job)
  if (kept === undefined || job === undefined) return { id, title: id, at: undefined, answers: 0, damaged: true }
  const places = [job.facts, job.choices, job.private].flatMap((section) => Object.values(entriesOf(section) ?? {}))
  const title = entriesOf(entriesOf(job.facts)?.job)?.[TITLE]
  return {
    id,
    title: typeof title === 'string' && title !== NOT_MEASURED ? title : id,
    at: typeof kept.at === 'string' ? (kept.at as JobSummary['at']) : undefined,
    where: typeof kept.where === 'string' ? kept.where : undefined,
    answers: places.reduce<number>((count, answers) => count + Object.keys(entriesOf(answers) ?? {}).length, 0),
    damaged: false,
  }
}

/** Id of the question that names a job. */
const TITLE = 'title'

function parsed(body: string): unknown {
  try {
    return JSON.parse(body)
  } catch {
    return undefined
  }
}

const entriesOf = (value: unknown): Readonly<Record<string, unknown>> | undefined =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value } : undefined
