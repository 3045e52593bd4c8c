import type { TraceNode } from './trace-node.ts'

/** One line of a tree: how deep it stands, what it is called, its value, and where that is from in words. */
export interface TraceRow {
  readonly depth: number
  readonly name: string
  readonly value: string
  readonly words: string
  /** How many lines further down belong to it. */
  readonly under: number
}

/** A tree as lines, each number above what it was come by. */
export const traceRows = (nodes: readonly TraceNode[], depth = 0): readonly TraceRow[] =>
  nodes.flatMap((node) => {
    const inner = traceRows(node.inputs, depth + 1)
    return [{ depth, name: node.name, value: node.value, words: wordsOf(node), under: inner.length }, ...inner]
  })

/** `shelf depth − front edge (geometry); left alcove`. */
function wordsOf(node: TraceNode): string {
  const where = node.about === '' ? '' : `; ${node.about}`
  return `${saidOf(node)}${where}${node.again === true ? '; taken apart above' : ''}`
}

function saidOf({ standing, plain, source }: TraceNode): string {
  switch (standing) {
    case 'answered':
      return `answered: ${plain}`
    case 'suggested':
    case 'assumed':
      return `${standing}: ${[plain, source].filter((t) => t !== '').join(', ')}`
    case 'your setting':
      return `your setting: ${plain}`
    case 'given':
      return plain
    default:
      return `${plain} (${source})`
  }
}
