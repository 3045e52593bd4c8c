import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import type { Trace, TraceNode } from '../../src/plan/trace/trace-node.ts'
import { runProgram } from './run-program.ts'

const DEMO = fileURLToPath(new URL('../../demo/alcoves-inch/job.json', import.meta.url))
const METRIC = fileURLToPath(new URL('../../demo/niche-metric/job.json', import.meta.url))
const UTF8 = { LANG: 'en_US.UTF-8' }

const inJson = async (job: string, ...mark: readonly string[]): Promise<readonly Trace[]> => {
  const { code, stdout } = await runProgram(['explain', job, ...mark, '--json'])
  expect(code).toBe(0)
  return JSON.parse(stdout).traces
}

const all = (nodes: readonly TraceNode[]): readonly TraceNode[] => nodes.flatMap((n) => [n, ...all(n.inputs)])

describe('explain', () => {
  it('prints the tree of a part from its sizes down to answers and figures, in 79 columns', async () => {
    const { code, stdout, stderr } = await runProgram(['explain', DEMO, 'L-H1', 'skin'], { env: UTF8 })
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    const lines = stdout.split('\n')
    expect(lines[0]).toBe('L-H1 skin (shelf skin), left alcove, shelf 1')
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(79)
    for (const said of ['− set-back, down to the cut step', 'answered: return depths', 'common practice, no source'])
      expect(stdout.replace(/\s+/g, ' ')).toContain(said)
  })

  it('says the same in ASCII where the terminal has no more', async () => {
    const { stdout } = await runProgram(['explain', DEMO, 'L-H1', 'skin'], { env: { LANG: 'C', NO_COLOR: '1' } })
    expect(stdout).toMatch(/^[\n -~]*$/)
  })

  it('gives a shelf’s depth as return less set-back, each with its origin', async () => {
    const [trace] = await inJson(DEMO, 'l-h1 skin')
    const depth = all(trace?.nodes ?? []).find((n) => n.id === 'shelf.depth')
    expect(depth?.inputs.map((n) => [n.name, n.value, n.standing])).toEqual([
      ['room', '14 5/8 in', 'answered'],
      ['set back', '1/2 in', 'suggested'],
    ])
    expect(depth?.value).toBe('14 1/8 in')
  })

  it('writes a metric job in millimetres, and one mark of several pieces as several trees', async () => {
    const traces = await inJson(METRIC, 'M-H1')
    expect(traces.length).toBeGreaterThanOrEqual(3)
    for (const { nodes } of traces) expect(nodes[0]?.value).toMatch(/ mm$/)
  })

  it.each([
    [['explain', DEMO], 'explain needs a mark or a total'],
    [['explain', DEMO, 'L2-S9'], 'Near to it: L2-S1'],
    [['explain', DEMO, 'pric'], 'Near to it: price'],
    [['explain', DEMO, 'zzzzzzzzzzzzzzzzzzzzzzzzzz'], 'Nothing in this job is called'],
  ])('ends with 2 and words for %s', async (words, said) => {
    const { code, stdout, stderr } = await runProgram(words)
    expect(stderr).toContain(said)
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
  })

  it('ends with 4 when the file is not there', async () => {
    const { code } = await runProgram(['explain', 'nowhere.json', 'price'])
    expect(code).toBe(4)
  })
})
