import { beforeAll, describe, expect, it } from 'vitest'
import type { Block } from '../../../src/documents/block.ts'
import { type ForHelper, forHelper } from '../../../src/documents/for-helper.ts'
import { daysOfWork } from '../../../src/documents/install-sequence/days-of-work.ts'
import { installPaper } from '../../../src/documents/install-sequence/install-sequence.ts'
import { writePdf } from '../../../src/documents/write/pdf.ts'
import { ASSETS, STAMP } from '../assets.ts'
import { inchPlan } from '../fixture.ts'
import { pdfPages } from '../pdf-text.ts'

let view: ForHelper
let pages: readonly string[]

beforeAll(async () => {
  view = forHelper(inchPlan())
  pages = await pdfPages(await writePdf(installPaper(view, ASSETS), ASSETS, STAMP))
}, 60_000)

const linesOf = (block: Block): readonly string[] => {
  if (block.kind === 'fact') return block.lines
  return block.kind === 'together' || block.kind === 'chapter' ? block.blocks.flatMap(linesOf) : []
}

describe('the install sequence of a small job', () => {
  it('takes fourteen pages at most, and none but the last is nearly empty', () => {
    const words = pages.map((page) => page.split(' ').length)
    expect(pages.length).toBeLessThanOrEqual(14)
    for (const count of words.slice(0, -1)) expect(count).toBeGreaterThan(Math.max(...words) * 0.45)
  })

  it('says a caution once a day, with the steps it holds for', () => {
    const days = installPaper(view, ASSETS).sections.flatMap((s) => s.blocks.filter((b) => b.kind === 'chapter'))
    expect(days.length).toBeGreaterThan(10)
    const cautions = [...new Set(view.tasks.flatMap((task) => task.cautions))]
    for (const day of days) {
      const lines = linesOf(day)
      for (const caution of cautions) {
        expect(lines.filter((line) => line.endsWith(caution)).length, `${day.text}: ${caution}`).toBeLessThanOrEqual(1)
      }
    }
  })

  it('goes through the days in their order, its steps numbered through', () => {
    const days = daysOfWork(view.tasks)
    const dates = days.map((day) => day.day)
    expect(dates).toEqual([...dates].sort())
    const numbers = days.flatMap((day) => day.tasks.map((step) => step.number))
    expect(numbers).toEqual(numbers.map((_, i) => i + 1))
    // What may hold lead or asbestos is looked at before anything is sawn.
    expect(days[0]?.tasks.some((step) => step.task.title.startsWith('Lead'))).toBe(true)
  })

  it('leaves no caution of any step out', () => {
    const said = installPaper(view, ASSETS).sections.flatMap((s) => s.blocks.flatMap(linesOf))
    for (const task of view.tasks.filter((t) => t.place === 'site' || t.place === 'shop')) {
      for (const caution of task.cautions) expect(said.some((line) => line.endsWith(caution))).toBe(true)
    }
  })

  it('splits no step over two pages', () => {
    for (const task of view.tasks.filter((t) => (t.place === 'site' || t.place === 'shop') && t.checks.length > 0)) {
      const last = task.checks[task.checks.length - 1] ?? ''
      const together = pages.some((page) => page.includes(task.title) && page.includes(last))
      expect(together, task.title).toBe(true)
    }
  })

  it('names the day again at the head of a page it runs over', () => {
    expect(pages.some((page) => page.includes(', goes on'))).toBe(true)
  })
})
