import { mkdir, mkdtemp, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { publishedRows } from '../../src/figures/published.ts'
import { emptyJob } from '../../src/job/job.ts'
import { runProgram } from './run-program.ts'

let folder = ''
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nichework-'))
  for (const home of ['none', 'own', 'broken']) await mkdir(join(folder, home))
  await writeFile(join(folder, 'own', 'own-figures.json'), '{"saw.kerf": {"inch": "3/32 in", "because": "thin blade"}}')
  await writeFile(join(folder, 'broken', 'own-figures.json'), '{\n"saw.kerf": {"inch": "3/32", "because": "x"}\n}')
  await writeFile(join(folder, 'job.json'), JSON.stringify(emptyJob('empty-1', '2026-11-25')))
  await writeFile(join(folder, 'answers.json'), '{"schema": "answers-1", "answers": {"job.units": "inches"}}')
})
const run = (home: string, words: readonly string[]) =>
  runProgram(words, { cwd: folder, env: { NICHEWORK_HOME: join(folder, home) } })

describe('nichework figures', () => {
  it('lists every figure with its source, and those that are your own', async () => {
    const { code, stdout, stderr } = await run('own', ['figures'])
    expect(code).toBe(0)
    for (const id of publishedRows().keys()) expect(stdout).toContain(`\n  ${id}   `)
    expect(stdout).toContain('    yours: 3/32 in or 3.2 mm   your setting: thin blade')
    expect(stderr).toContain('1 of these are your own')
    expect((await run('none', ['figures'])).stdout).not.toContain('    yours:')
  })

  it('as JSON: each with file, values, unit, source and what is yours', async () => {
    const { figures } = JSON.parse((await run('own', ['figures', '--json'])).stdout)
    expect(figures).toHaveLength(publishedRows().size)
    expect(figures.find((f: { id: string }) => f.id === 'saw.kerf')).toMatchObject({
      values: { inch: '1/8 in', metric: '3.2 mm' },
      unit: 'length',
      yours: { values: { inch: '3/32 in', metric: '3.2 mm' } },
    })
  })

  it('one figure in full, with how you put in your own; the nearest name for a slip', async () => {
    const { stdout } = await run('none', ['figures', '--where', 'lead.year'])
    expect(stdout).toContain('40 CFR 745')
    expect(stdout).toContain('changes only to a larger value')
    expect(stdout).toContain('"lead.year": {"value": 1978, "because": "why"}')
    const slip = await run('none', ['figures', '--where', 'saw.kerv'])
    expect(slip.code).toBe(2)
    expect(slip.stderr).toContain('Nearest: saw.kerf')
    expect((await run('none', ['figures', '--where'])).stderr).toContain('--where needs the name of a figure')
  })

  it('names file, line and figure of one that cannot be used, and ends with 4', async () => {
    const { code, stdout, stderr } = await run('broken', ['figures'])
    expect({ code, stdout }).toEqual({ code: 4, stdout: '' })
    expect(stderr).toContain(
      `${join(folder, 'broken', 'own-figures.json')}: line 2, saw.kerf: "inch": "3/32" is not a length`,
    )
  })
})

describe('a job', () => {
  const usedKerf = async (home: string, words: readonly string[]) =>
    JSON.parse((await run(home, ['plan', ...words, '--json'])).stdout).job?.figures

  it('reckons with what it carries, whatever the folder holds; --own-figures brings it up to date', async () => {
    expect(await usedKerf('own', ['job.json'])).toBeUndefined()
    expect(await usedKerf('own', ['job.json', '--own-figures'])).toMatchObject({ 'saw.kerf': { inch: '3/32 in' } })
    expect((await run('broken', ['check', 'job.json'])).code).not.toBe(4)
    expect((await run('broken', ['check', 'job.json', '--own-figures'])).code).toBe(4)
  })

  it('begun from an answers file gets the figures of the folder', async () => {
    expect(await usedKerf('own', ['answers.json'])).toMatchObject({ 'saw.kerf': { inch: '3/32 in' } })
    expect(await usedKerf('none', ['answers.json'])).toBeUndefined()
  })
})
