import { readdirSync } from 'node:fs'
import type { KeptJob } from '../../src/archive/job-store.ts'
import { readKeptJob } from '../../src/archive/kept-job.ts'
import { newestSave } from '../../src/archive/newest-save.ts'
import { readSaveName } from '../../src/archive/save-file.ts'
import { everyQuestion, type Question } from '../../src/interview/asked.ts'
import { emptyJob, type Job } from '../../src/job/job.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { nodeFiles } from '../../src/ports/node/files.ts'
import { isShown, type Terminal } from './harness.ts'

/** Texts to type, by question; a list of texts for the rows of a table. */
export type Texts = Readonly<Record<string, string | readonly string[]>>

const ENTER = '\r'
/** A likely slip waits for a second Enter; a refusal says why. */
const HELD = /^\W*look\s/m
const REFUSED = /^\W*Error:\s/m

/** What is on disk of the only job in a data folder. Reads without touching anything: the program is running. */
export async function keptIn(home: string): Promise<KeptJob> {
  const [id = 'none'] = readdirSync(`${home}/jobs`)
  const { save } = await newestSave(nodeFiles, `${home}/jobs/${id}`)
  if (save === undefined) throw new Error('No save verifies.')
  return readKeptJob(save.body, id)
}

function savesIn(home: string): number {
  const jobs = readdirSync(home).includes('jobs') ? readdirSync(`${home}/jobs`) : []
  const names = jobs.flatMap((id) => readdirSync(`${home}/jobs/${id}`))
  return Math.max(0, ...names.map((name) => readSaveName(name)?.number ?? 0))
}

/** Types answers at a running interview, as a person does: one after the other, each when its question is shown. */
export class Typist {
  constructor(
    private readonly terminal: Terminal,
    private readonly home: string,
    private readonly texts: Texts,
  ) {}

  /** From the question shown to the one after `stop` answered questions, or to the review. Gives the questions answered. */
  async answer(start: string, stop = Number.POSITIVE_INFINITY): Promise<readonly string[]> {
    const answered: string[] = []
    let at = start
    while (at !== 'review' && answered.length < stop) {
      await this.terminal.until(this.questionAt(at, await this.job()))
      const text = this.texts[at] ?? ''
      if (typeof text !== 'string') for (const row of text) await this.enter(row)
      await this.enter(typeof text === 'string' ? text : '')
      answered.push(at)
      at = await this.next(at)
    }
    return answered
  }

  /** Types a text and Enter, and waits until it is on disk; what is held as a likely slip gets a second Enter. */
  private async enter(text: string): Promise<void> {
    const before = savesIn(this.home)
    this.terminal.type(`${text}${ENTER}`)
    const saved = () => savesIn(this.home) > before
    await this.terminal.until((screen) => saved() || HELD.test(screen) || REFUSED.test(screen))
    if (saved()) return
    if (REFUSED.test(this.terminal.screen())) throw new Error(`"${text}" is not taken:\n${this.terminal.screen()}`)
    this.terminal.type(ENTER)
    await this.terminal.until(saved)
  }

  /** The question after this one, a stop it raised gone past. */
  private async next(from: string): Promise<string> {
    const { at, job } = await keptIn(this.home)
    const stops = makePlan(job, 'quick').messages.filter((m) => m.weight === 'stop' && m.about === from)
    const next = at ?? 'review'
    const here = next === 'review' ? 'Check answers' : this.questionAt(next, job)
    const screen = await this.terminal.until(
      (now) => isShown(now, here) || stops.some((stop) => isShown(now, stop.short)),
    )
    if (!isShown(screen, here)) this.terminal.type(ENTER)
    return next
  }

  private async job(): Promise<Job> {
    return savesIn(this.home) === 0 ? emptyJob('none-yet', '2026-11-25') : (await keptIn(this.home)).job
  }

  private questionAt(key: string, job: Job): string {
    const question: Question | undefined = everyQuestion(job).find((q) => q.key === key)
    if (question === undefined) throw new Error(`No question ${key}.`)
    return question.field.asks(question.bay)
  }
}
