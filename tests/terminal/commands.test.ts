import { mkdtemp, readdir, readFile, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import about from '../../package.json' with { type: 'json' }
import { emptyJob } from '../../src/job/job.ts'
import { runProgram } from './run-program.ts'

let folder = ''
let jobFile = ''
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nichework-'))
  jobFile = join(folder, 'job.json')
  await writeFile(jobFile, JSON.stringify(emptyJob('empty-1', '2026-11-25')))
})

const run = (words: readonly string[], options: Parameters<typeof runProgram>[1] = {}) =>
  runProgram(words, { cwd: folder, ...options, env: { NICHEWORK_HOME: join(folder, 'home'), ...options.env } })

describe('the built program without a terminal', () => {
  it('says what to run instead of the interview and ends with 2, also where CI is set', async () => {
    for (const words of [[], ['start']]) {
      const { code, stdout, stderr } = await run(words, { env: { CI: 'true' } })
      expect(code).toBe(2)
      expect(stdout).toBe('')
      expect(stderr).toContain('nichework pack FILE.json --out PACKET.zip')
      expect(stderr).toContain('nichework demo')
    }
  })

  it('prints help with three examples first, and its version', async () => {
    const help = await run(['--help'])
    expect(help.code).toBe(0)
    expect(help.stdout.match(/^ {2}nichework/gm)).toHaveLength(3)
    expect((await run(['pack', '-h'])).stdout).toBe(help.stdout)
    expect(await run(['--version'])).toEqual({ code: 0, stdout: `nichework ${about.version}\n`, stderr: '' })
  })

  it.each([
    [['pak', 'job.json'], 'Did you mean pack?'],
    [['check', 'job.json', '--jsn'], 'Did you mean --json?'],
    [['pack', 'job.json'], 'pack needs --out'],
    [['pack', 'job.json', '--out'], '--out needs a file name'],
    [['pack'], 'pack needs a job'],
    [['pack', 'job.json', '--out', 'job.json'], 'never written to'],
    [['check', 'a.json', 'b.json'], 'no use for "b.json"'],
    [['plan', 'job.json'], 'plan needs --json'],
    [['schema', '--json'], 'schema has no option --json'],
  ])('ends with 2 and words for: %s', async (words, said) => {
    const { code, stdout, stderr } = await run(words)
    expect(stderr).toContain(said)
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
  })

  it.each([
    ['nowhere.json', undefined, 'no such file'],
    ['-', '', 'the file is empty'],
    ['-', '{"schema": 1,\n"schema": 1}', 'stands twice (lines 1 and 2)'],
    ['-', '{"schema": 99}', 'made by a newer nichework'],
    [
      '-',
      JSON.stringify({ ...emptyJob('empty-1', '2026-11-25'), facts: { job: { units: 'cubits' } } }, undefined, 1),
      'facts.job.units (units): "cubits" does not fit here. It takes one of "inch", "metric".',
    ],
    ['-', 'PK', 'zip cannot be read'],
  ])('ends with 4, names the place and writes nothing for %s %s', async (name, input, said) => {
    const before = await readdir(folder)
    for (const words of [
      ['check', name],
      ['plan', name, '--json'],
      ['pack', name, '--out', 'never.zip'],
    ]) {
      const { code, stdout, stderr } = await run(words, { input: input ?? '' })
      expect(stderr).toContain(said)
      expect({ code, stdout }).toEqual({ code: 4, stdout: '' })
    }
    expect(await readdir(folder)).toEqual(before)
  })

  it('plans a job of which nothing is known, with the units said once', async () => {
    const { code, stdout } = await run(['plan', jobFile, '--json'])
    expect(code).toBe(0)
    const plan = JSON.parse(stdout)
    expect(plan).toMatchObject({
      format: 'nichework-plan',
      version: 1,
      units: { length: 'nm' },
      job: { id: 'empty-1' },
    })
    for (const list of ['parts', 'joints', 'layouts', 'purchases', 'messages', 'used', 'bays'])
      expect(plan[list], list).toBeInstanceOf(Array)
    expect((await run(['plan', '-', '--json'], { input: await readFile(jobFile) })).stdout).toBe(stdout)
  })

  it('checks a job: words without --json, one document with it, the same exit code', async () => {
    const words = await run(['check', jobFile])
    const json = await run(['check', jobFile, '--json'])
    const { messages } = JSON.parse(json.stdout)
    const weights = messages.map((m: { weight: string }) => m.weight)
    expect(words.code).toBe(weights.includes('stop') ? 3 : weights.includes('confirm') ? 6 : 0)
    expect(json.code).toBe(words.code)
    for (const { short } of messages) expect(words.stdout).toContain(short)
  })

  it('prints the schema of a job file as it stands in shared', async () => {
    const { stdout } = await run(['schema'])
    expect(stdout).toBe(await readFile(new URL('../../shared/job.schema.json', import.meta.url), 'utf8'))
  })

  it('never changes its input', async () => {
    const before = await stat(jobFile)
    await run(['check', jobFile])
    expect((await stat(jobFile)).mtimeMs).toBe(before.mtimeMs)
  })

  it('names SOURCE_DATE_EPOCH when it is not a number of seconds', async () => {
    const { code, stderr } = await run(['pack', jobFile, '--out', 'x.zip'], { env: { SOURCE_DATE_EPOCH: 'yesterday' } })
    expect(code).toBe(2)
    expect(stderr).toContain('SOURCE_DATE_EPOCH is "yesterday"')
  })
})
