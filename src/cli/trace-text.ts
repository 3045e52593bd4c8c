import type { Trace } from '../plan/trace/trace-node.ts'
import { type TraceRow, traceRows } from '../plan/trace/trace-rows.ts'
import { cellsOf, padCells, wrapCells } from '../screens/cells.ts'
import { inSigns, type Look } from '../screens/look.ts'

const WIDTH = 79
const INDENT = 2
/** Where the words begin when name and value leave room. */
const WORDS_AT = 34
const LEAST_WORDS = 24

/** Trees as the command line prints them, in 79 columns: a number, its value, then where it is from. */
export const traceText = (traces: readonly Trace[], look: Look): string =>
  traces
    .map((trace) => linesOf(trace).join('\n'))
    .map((text) => inSigns(text, look))
    .join('\n\n')

const linesOf = ({ title, says, nodes }: Trace): readonly string[] => [
  ...wrapCells(title, WIDTH),
  ...says.flatMap((words) => hung('', words, INDENT)),
  '',
  ...traceRows(nodes).flatMap(rowLines),
]

function rowLines({ depth, name, value, words }: TraceRow): readonly string[] {
  const head = `${' '.repeat(depth * INDENT)}${name}  ${value}`.trimEnd()
  if (words === '') return [head]
  const at = Math.max(WORDS_AT, cellsOf(head) + 2)
  return at + LEAST_WORDS <= WIDTH ? hung(head, words, at) : [head, ...hung('', words, (depth + 2) * INDENT)]
}

/** Words beside a head, each further line under the first. */
const hung = (head: string, words: string, at: number): readonly string[] =>
  wrapCells(words, WIDTH - at).map((line, i) => padCells(i === 0 ? head : '', at) + line)
