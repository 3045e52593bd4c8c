import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { jobIn, openJson } from '../../../src/job/open.ts'
import type { TraceNode } from '../../../src/plan/trace/trace-node.ts'
import { traceables, tracesNamed } from '../../../src/plan/trace/traceable.ts'
import { tracing } from '../../../src/plan/trace/tracing.ts'
import { showMoney } from '../../../src/units/money.ts'

const file = 'demo/alcoves-inch/job.json'
const on = tracing(jobIn(openJson(readFileSync(file), file), file))
const known = traceables(on)
const all = (nodes: readonly TraceNode[]): readonly TraceNode[] => nodes.flatMap((n) => [n, ...all(n.inputs)])

describe('what can be asked about', () => {
  it.each([
    'price',
    'cost',
    'hours',
    'finish',
    'sheets',
    'joint 1',
    'job.boxHeight',
    'boxHeight',
    'shelf.depth',
    'box L2',
  ])('%s has a value', (name) => {
    const [trace] = tracesNamed(known, name)
    expect(trace?.nodes[0]?.value).not.toBe('')
    expect(trace?.nodes[0]?.value).toBeDefined()
  })

  it('is every part by its mark and every question by its key', () => {
    for (const { mark } of on.plan.parts) expect(tracesNamed(known, mark).length, mark).toBeGreaterThan(0)
    for (const key of on.plan.used.keys()) expect(tracesNamed(known, key).length, key).toBe(1)
  })

  it('the price comes down to an answered hour rate and to hours of one piece', () => {
    const [trace] = tracesNamed(known, 'price')
    const nodes = all(trace?.nodes ?? [])
    expect(nodes[0]?.value).toBe(`${showMoney(on.plan.price.total)} USD`)
    expect(nodes.some((n) => n.id === 'hourRate' && n.standing === 'answered')).toBe(true)
    expect(nodes.filter((n) => n.standing === 'practice').length).toBeGreaterThan(5)
  })
})
