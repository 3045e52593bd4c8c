import { showDay } from '../../units/day.ts'
import { showHours } from '../../units/hours.ts'
import type { HelperTask } from '../audience-fields.ts'
import { type Block, type Fact, factOf, together, warned } from '../block.ts'
import { markRanges } from '../mark-ranges.ts'
import type { NumberedTask } from './days-of-work.ts'

/** One step as one block: it never splits over a page. */
export const stepBlocks = ({ number, task }: NumberedTask): readonly Block[] => [
  { kind: 'space' },
  together(
    stepHead(number, task),
    ...factOf('parts', partWords(task.marks)),
    ...task.cautions.map((c) => warned('caution', c)),
    ...factOf('set out', task.setOut),
    ...factOf('tools', task.tools.length === 0 ? [] : [task.tools.join(', ')]),
    ...factOf('check', task.checks),
    ...factOf('wait', waitWords(task)),
  ),
]

/** More marks than are read at a glance are said by their places. */
const MARKS_AT_A_GLANCE = 12

function partWords(marks: readonly string[]): readonly string[] {
  if (marks.length === 0) return []
  if (marks.length <= MARKS_AT_A_GLANCE) return [markRanges(marks)]
  const places = [...new Set(marks.map((mark) => mark.split('-')[0] ?? mark))]
  return [`${marks.length} pieces, marks of ${places.join(', ')}`]
}

function stepHead(number: number, task: HelperTask): Fact {
  const people = task.people === 2 ? ', two people' : ''
  return {
    kind: 'fact',
    word: String(number),
    weight: 'bold',
    lines: [task.title],
    right: `${showHours(task.hours)} h${people}`,
    tick: true,
  }
}

function waitWords({ wait, start, finish }: HelperTask): readonly string[] {
  const days = start === finish ? [] : [`Goes on until ${showDay(finish)}.`]
  if (wait.says !== '') return [...days, `${wait.says}.`]
  if (wait.clockHours > 0) return [...days, `${wait.clockHours} h before the next step.`]
  return days
}
