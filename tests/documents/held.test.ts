import { describe, expect, it } from 'vitest'
import type { Block, Paper } from '../../src/documents/block.ts'
import type { BookCell } from '../../src/documents/book.ts'
import { cutListBook } from '../../src/documents/cut-list/cut-list.ts'
import { drawingsPaper } from '../../src/documents/drawings/drawings.ts'
import { type ForHelper, forHelper } from '../../src/documents/for-helper.ts'
import { forShops } from '../../src/documents/for-shop.ts'
import { isHeld } from '../../src/documents/held.ts'
import { installPaper } from '../../src/documents/install-sequence/install-sequence.ts'
import { requestPaper } from '../../src/documents/requests/requests.ts'
import { touchUpPaper } from '../../src/documents/touch-up-plan/touch-up-plan.ts'
import { FIELDS } from '../../src/job/fields.ts'
import { withAnswer } from '../../src/job/job.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import { type Field, NOT_MEASURED } from '../../src/things/field.ts'
import { ASSETS } from './assets.ts'
import { demoJob } from './fixture.ts'

/** The lines of a paper as they are read: a row of a table is one, a drawn piece with its words is one. */
function linesOf(paper: Paper): readonly string[] {
  const read = (block: Block): readonly string[] => {
    switch (block.kind) {
      case 'fact':
        return block.lines.map((text, i) => (i === 0 ? `${block.word} ${text}` : text))
      case 'table':
        return block.rows.map((row) => row.cells.filter((cell) => typeof cell === 'string').join(' | '))
      case 'drawing':
        return block.drawing.shapes.flatMap((s) => (s.kind === 'label' ? [s.lines.join(' | ')] : []))
      case 'together':
      case 'chapter':
        return block.blocks.flatMap(read)
      default:
        return []
    }
  }
  return paper.sections.flatMap((section) => section.blocks.flatMap(read))
}

const cellText = (cell: BookCell): string =>
  cell === null
    ? ''
    : typeof cell === 'string'
      ? cell
      : 'bold' in cell && typeof cell.bold === 'string'
        ? cell.bold
        : ''

/** Two digits in a row that are no mark, or a fraction: a size. */
const SIZE = /\d+\/\d+|(?<![\w-])\d{2,}/

/** Marks of which every piece waits. */
function heldMarks(view: ForHelper): readonly string[] {
  const marks = [...new Set(view.parts.map((part) => part.mark))]
  return marks.filter((mark) => view.parts.every((part) => part.mark !== mark || isHeld(part)))
}

const names = (line: string, marks: readonly string[]): boolean => {
  const words = new Set(line.split(/[^A-Za-z0-9-]+/))
  return marks.some((mark) => words.has(mark))
}

/** Every question of the demo wall that can be left unmeasured, at each place it is asked. */
const job = demoJob('alcoves-inch')
const questions = FIELDS.filter((field) => field.missing === 'hold').flatMap((field) =>
  [...makePlan(job, 'quick').used.keys()]
    .filter((key) => key.endsWith(`.${field.id}`))
    .map((key) => ({ key, field: field as Field, place: key.slice(0, key.indexOf('.')) })),
)

const planWithout = ({ field, place }: (typeof questions)[number]): Plan =>
  makePlan(withAnswer(job, field, place as 'a', NOT_MEASURED), 'quick')

describe('a size that waits for a measurement', () => {
  it('is waited for by something, whichever measurement is missing', () => {
    expect(questions.length).toBeGreaterThan(10)
  })

  it.each(questions)('stands nowhere in the papers: $key', (question) => {
    const plan = planWithout(question)
    const view = forHelper(plan)
    const marks = heldMarks(view)
    const papers = [
      drawingsPaper(view, ASSETS),
      touchUpPaper(view, ASSETS),
      installPaper(view, ASSETS),
      ...forShops(plan).map((shop) => requestPaper(shop, ASSETS)),
    ]
    const lines = [
      ...papers.flatMap(linesOf),
      ...cutListBook(view).sheets.flatMap((sheet) => sheet.rows.map((row) => row.map(cellText).join(' | '))),
    ]
    const wrong = lines.filter(
      (line) => (names(line, marks) || line.includes('HOLD')) && SIZE.test(line.replace(/^\d+(, \d+)?/, '')),
    )
    expect(wrong).toEqual([])
  })
})

describe('the drawings of what waits', () => {
  const studless = questions.find((q) => q.key.endsWith('.widths') || q.key.endsWith('Width'))

  it('give no figure across a bay that is not measured, and all others', () => {
    if (studless === undefined) throw new Error(`No width among ${questions.map((q) => q.key).join(', ')}.`)
    const view = forHelper(planWithout(studless))
    const [front] = drawingsPaper(view, ASSETS).sections
    const says = (front?.blocks ?? []).flatMap((b) =>
      b.kind === 'drawing' ? b.drawing.shapes.flatMap((s) => (s.kind === 'dimension' ? [s.says] : [])) : [],
    )
    expect(says).toContain('HOLD')
    expect(says.some((figure) => figure !== 'HOLD')).toBe(true)
  })
})
