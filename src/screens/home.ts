import type { JobSummary } from '../archive/job-store.ts'
import { cleanText } from '../interview/clean-text.ts'
import { BLANK, bodyRoom, type Frame, fact, framed, heading, type Layout, marked, sentence } from './frame.ts'
import { windowed } from './lists.ts'

/** The list of jobs, and which line is chosen. */
export interface Home {
  readonly jobs: readonly JobSummary[]
  readonly hasDemo: boolean
  readonly line: number
  readonly filter: string
  readonly problem: string
}

export type HomeChoice =
  | { readonly kind: 'open'; readonly id: string }
  | { readonly kind: 'new' | 'demo' }
  | { readonly kind: 'leave' }

interface HomeLine {
  readonly word: string
  readonly says: string
  readonly choice: HomeChoice
}

/** What can be chosen: kept jobs that fit the filter, newest first, then what begins one. */
export function homeLines({ jobs, hasDemo, filter }: Home): readonly HomeLine[] {
  const found = jobs.filter((j) => fits(j.title, filter))
  return [
    ...found.map(
      (job): HomeLine => ({
        word: job.damaged ? 'damaged' : 'go on',
        says: jobWords(job),
        choice: { kind: 'open', id: job.id },
      }),
    ),
    { word: 'begin', says: 'a new job', choice: { kind: 'new' } },
    ...(hasDemo ? [{ word: '', says: 'the demo', choice: { kind: 'demo' } } satisfies HomeLine] : []),
    { word: 'leave', says: 'nothing is lost: every answer is kept', choice: { kind: 'leave' } },
  ]
}

export const homeChoice = (home: Home): HomeChoice | undefined => homeLines(home)[home.line]?.choice

export const movedHome = (home: Home, by: number): Home => ({
  ...home,
  line: Math.max(0, Math.min(homeLines(home).length - 1, home.line + by)),
})

export const filteredHome = (home: Home, filter: string): Home => ({ ...home, filter, line: 0, problem: '' })

function jobWords(job: JobSummary): string {
  const name = cleanText(job.title).text || 'a job without a name'
  if (job.damaged) return `${name}   Enter opens the newest save that is whole`
  const where = job.where === undefined ? [] : [cleanText(job.where).text]
  return `${name}   ${[...where, `${job.answers} ${job.answers === 1 ? 'answer' : 'answers'}`].join(' · ')}`
}

/** Every typed word stands somewhere in the title, in any order; case and accents do not matter. */
const fits = (title: string, filter: string): boolean =>
  bare(filter)
    .split(' ')
    .every((word) => bare(title).includes(word))
const bare = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase()
    .trim()

const KEYS = 'Enter choose · ↑ ↓ move · type to find · Ctrl+C leave'

/** The list of jobs as a page. */
export function homePage(layout: Layout, home: Home): Frame {
  const lines = homeLines(home)
  const rows = lines.map((line, i) => {
    const row = fact(layout, line.word, line.says)
    return i === home.line ? marked(layout, row) : row
  })
  const none = home.filter !== '' && home.jobs.every((j) => !fits(j.title, home.filter))
  const find = none ? `${home.filter}_   No job matches; Esc clears.` : `${home.filter}_`
  const top = [
    ...sentence(layout, home.jobs.length === 0 ? 'What would you like to begin?' : 'Which job?', 'bold'),
    BLANK,
    ...(home.jobs.length === 0 ? [] : fact(layout, 'find', find)),
    BLANK,
  ]
  const said = home.problem === '' ? [] : fact(layout, 'Error:', home.problem, 'bold')
  const count = home.jobs.length
  return framed(layout, {
    head: heading(layout, 'nichework', count === 0 ? 'nothing kept yet' : `${count} ${count === 1 ? 'job' : 'jobs'}`),
    body: [...top, ...windowed(layout, rows, home.line, bodyRoom(layout, KEYS) - top.length - said.length), ...said],
    effect: '',
    keys: KEYS,
  })
}
