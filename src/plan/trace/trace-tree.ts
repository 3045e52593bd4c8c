import { fieldById } from '../../job/fields.ts'
import type { Quantity, Ref } from '../../things/formula.ts'
import { type InUse, type Noted, originOf, subjectOf } from './origin-index.ts'
import { sourceWords, standingOf } from './standing.ts'
import type { TraceNode } from './trace-node.ts'
import type { Tracing } from './tracing.ts'
import { quantityOf, written, writtenAnswer } from './written.ts'

/** A number to trace: as it stands on a paper or in the plan. */
export interface Wanted {
  readonly name: string
  readonly value: unknown
  readonly about: string
  readonly from?: Ref | readonly Ref[] | undefined
  /** What it counts, where no working says so. */
  readonly as?: Quantity
}

/** Trees of several numbers, in order; a working shown once is not taken apart again. */
export function traceNodes(on: Tracing, wanted: readonly Wanted[]): readonly TraceNode[] {
  const seen = new Set<number>()
  return wanted.map((one) => {
    const use: InUse = { ...one, by: '', before: Number.POSITIVE_INFINITY }
    const found = originOf(on.index, use) ?? lastAbout(on, one)
    return found === undefined
      ? givenNode(on, use, one.as ?? 'length')
      : workingNode(on, { use, found, seen, depth: MOST_DEPTH })
  })
}

/** What was worked out about the very thing with this very value, whatever it is called. */
const lastAbout = ({ index }: Tracing, { about, value, from }: Wanted): Noted | undefined =>
  from === undefined && about !== ''
    ? index.noted.findLast(({ working }) => working.about === about && working.result === value)
    : undefined

/** Deep enough for every chain from a part to the survey; a loop cannot come up, as each origin was noted earlier. */
const MOST_DEPTH = 24

interface Found {
  readonly use: InUse
  readonly found: Noted
  /** Workings shown so far. */
  readonly seen: Set<number>
  readonly depth: number
}

function workingNode(on: Tracing, at: Found): TraceNode {
  const { use, found } = at
  const { working } = found
  const head = {
    name: wordsOf(use.name),
    id: working.id,
    about: subjectOf(working.about) === subjectOf(use.about) ? '' : on.subject(working.about),
    value: shownValue(on, use, found),
    standing: standingOf(on, working),
    plain: working.plain,
    source: sourceWords(working),
  }
  const inputs = inputsOf(on.index.noted, found)
  if (at.seen.has(found.at)) return { ...head, inputs: [], ...(inputs.length === 0 ? {} : { again: true }) }
  at.seen.add(found.at)
  if (at.depth === 0) return { ...head, inputs: [] }
  return { ...head, inputs: inputs.flatMap((input) => inputNodes(on, at, input)) }
}

/** The input as used: a table it was read from shows only this value of it. */
function shownValue(on: Tracing, { value }: InUse, { working }: Noted): string {
  const field = working.kind === 'question' ? fieldById(working.id) : undefined
  return field !== undefined && value === working.result
    ? writtenAnswer(on, field, value)
    : written(on, value, quantityOf(on, working))
}

/** `insideWidth` → `inside width`. */
const wordsOf = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)

/** What a working leans on, as numbers in use. A suggestion that says nothing else is the figure or formula noted right before. */
export function inputsOf(noted: readonly Noted[], { working, at }: Noted): readonly InUse[] {
  const inputs = Object.entries(working.inputs).map(([name, value]) => ({
    name,
    value,
    about: working.about,
    by: working.id,
    before: at,
    from: working.from[name],
  }))
  const before = noted[at - 1]?.working
  if (working.kind !== 'question' || inputs.length > 0 || working.source === 'answered') return inputs
  if (before === undefined || before.kind === 'question' || before.result !== working.result) return []
  return [
    { name: 'suggested', value: working.result, about: before.about, by: '', before: at, from: { id: before.id } },
  ]
}

function inputNodes(on: Tracing, at: Found, use: InUse): readonly TraceNode[] {
  if (Array.isArray(use.value)) return listNodes(on, at, use, use.value)
  if (typeof use.value !== 'number' && (typeof use.value !== 'string' || use.from === undefined)) return []
  const found = originOf(on.index, use)
  if (found !== undefined) return [workingNode(on, { ...at, use, found, depth: at.depth - 1 })]
  return [givenNode(on, use, at.found.working.units[use.name] ?? 'length')]
}

const LARGEST = 3

/** A list stands as one line, with the few largest of its numbers under it. */
function listNodes(on: Tracing, at: Found, use: InUse, list: readonly unknown[]): readonly TraceNode[] {
  const numbers = list.filter((v) => typeof v === 'number')
  if (numbers.length === 0) return []
  const largest = [...new Set(numbers)].toSorted((a, b) => b - a).slice(0, LARGEST)
  const inputs = largest.flatMap((value) => inputNodes(on, at, { ...use, value }))
  const few = largest.length < numbers.length ? `, the ${largest.length} largest that differ` : ''
  return [
    {
      name: wordsOf(use.name),
      id: '',
      about: '',
      value: written(on, numbers, 'count'),
      standing: 'given',
      plain: `a list of ${numbers.length}${few}`,
      source: '',
      inputs,
    },
  ]
}

const givenNode = (on: Tracing, use: InUse, as: Quantity): TraceNode => ({
  name: wordsOf(use.name),
  id: '',
  about: '',
  value: use.value === 0 ? 'none' : written(on, use.value, as),
  standing: 'given',
  plain: '',
  source: '',
  inputs: [],
})
