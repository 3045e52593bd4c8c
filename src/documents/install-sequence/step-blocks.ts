import { showDay } from '../../units/day.ts'
import { showHours } from '../../units/hours.ts'
import type { HelperTask } from '../audience-fields.ts'
import { type Block, type Fact, factOf, SPACE, together, warned } from '../block.ts'
import { markRanges } from '../mark-ranges.ts'
import type { NumberedTask, WorkDay } from './days-of-work.ts'

/** A day's own cautions with its first step, then the other steps; no step splits over a page. */
export function dayBlocks({ tasks }: WorkDay): readonly Block[] {
  const shared = sharedCautions(tasks)
  const cautions = [...shared].map(([caution, numbers]) => warned('caution', `${stepsWord(numbers)}. ${caution}`))
  const [first, ...others] = tasks.map(({ number, task }) => stepBlocks(number, task, new Set(shared.keys())))
  return first === undefined ? [] : [together(...cautions, ...first), ...others.flatMap((o) => [SPACE, together(...o)])]
}

/** Cautions that more than one step of a day has, word for word, with the numbers of those steps. */
function sharedCautions(tasks: readonly NumberedTask[]): ReadonlyMap<string, readonly number[]> {
  const steps = new Map<string, readonly number[]>()
  for (const { number, task } of tasks) {
    for (const caution of new Set(task.cautions)) steps.set(caution, [...(steps.get(caution) ?? []), number])
  }
  return new Map([...steps].filter(([, numbers]) => numbers.length > 1))
}

const stepsWord = (numbers: readonly number[]): string =>
  `Steps ${numbers.slice(0, -1).join(', ')} and ${numbers[numbers.length - 1] ?? ''}`

const stepBlocks = (number: number, task: HelperTask, saidBefore: ReadonlySet<string>): readonly Block[] => [
  ...headAndParts(number, task),
  ...task.cautions.filter((c) => !saidBefore.has(c)).map((c) => warned('caution', c)),
  ...factOf('set out', paired(task.setOut)),
  ...factOf('tools', task.tools.length === 0 ? [] : [task.tools.join(', ')]),
  ...factOf('check', paired(task.checks)),
  ...factOf('wait', waitWords(task)),
]

/** Letters of a sentence short enough to share its line with the next. */
const HALF_A_LINE = 36

/** Short sentences stand two on a line. */
function paired([line, next, ...others]: readonly string[]): readonly string[] {
  if (line === undefined || next === undefined) return line === undefined ? [] : [line]
  const both = line.length <= HALF_A_LINE && next.length <= HALF_A_LINE
  return both ? [`${line}  ${next}`, ...paired(others)] : [line, ...paired([next, ...others])]
}

/** More marks than are read at a glance are said by their places. */
const MARKS_AT_A_GLANCE = 12

function partWords(marks: readonly string[]): readonly string[] {
  if (marks.length === 0) return []
  if (marks.length <= MARKS_AT_A_GLANCE) return [markRanges(marks)]
  const places = [...new Set(marks.map((mark) => mark.split('-')[0] ?? mark))]
  return [`${marks.length} pieces, marks of ${places.join(', ')}`]
}

/** Letters of a title and its marks that share the first line with hours and box. */
const FIRST_LINE = 46

/** `2  Plinths on packers  L-U1, R-U1`; marks that do not fit beside the title stand under it. */
function headAndParts(number: number, task: HelperTask): readonly Fact[] {
  const parts = partWords(task.marks)
  const title = [task.title, ...parts].join('  ')
  return title.length <= FIRST_LINE
    ? [stepHead(number, title, task)]
    : [stepHead(number, task.title, task), ...factOf('parts', parts)]
}

function stepHead(number: number, title: string, { hours, people }: HelperTask): Fact {
  const right = [...(hours > 0 ? [`${showHours(hours)} h`] : []), ...(people === 2 ? ['two people'] : [])]
  return { kind: 'fact', word: String(number), weight: 'bold', lines: [title], right: right.join(', '), tick: true }
}

function waitWords({ wait, start, finish }: HelperTask): readonly string[] {
  const days = start === finish ? [] : [`goes on until ${showDay(finish)}`]
  const drying =
    wait.says !== '' ? [wait.says] : wait.clockHours > 0 ? [`${wait.clockHours} h before the next step`] : []
  const says = [...days, ...drying]
  return says.length === 0 ? [] : [`${says.join('; ')}.`]
}
