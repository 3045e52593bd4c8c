import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { emptyJob, SCHEMA_VERSION } from '../../src/job/job.ts'
import { openJob } from '../../src/job/open.ts'
import { InputUnreadable, JobTooNew, NicheworkError } from '../../src/things/failure.ts'

const EMPTY = emptyJob('empty-1', '2026-11-25')
const bytesOf = (value: unknown) => Buffer.from(typeof value === 'string' ? value : JSON.stringify(value, undefined, 1))
const open = (value: unknown) => openJob(bytesOf(value), 'job.json')

function faultsOf(value: unknown): readonly string[] {
  try {
    open(value)
  } catch (error) {
    if (error instanceof InputUnreadable) return error.faults
    throw error
  }
  return []
}

describe('opening a job file', () => {
  it('gives back a job as it was written, with or without a mark at the start', () => {
    expect(open(EMPTY)).toEqual(EMPTY)
    expect(open(`\ufeff${JSON.stringify(EMPTY)}`)).toEqual(EMPTY)
    expect(open(JSON.stringify(EMPTY, undefined, 2).replaceAll('\n', '\r\n'))).toEqual(EMPTY)
  })

  it.each([
    [
      'an answer that is not allowed',
      { ...EMPTY, choices: { job: { inchStep: '1/3' } } },
      'line 8, choices.job.inchStep (cut step): "1/3" does not fit here. It takes one of "1/16", "1/32", "1/64".',
    ],
    [
      'a question nobody asks',
      { ...EMPTY, facts: { job: { colour: 'red' } } },
      'facts.job.colour: nichework has no such entry.',
    ],
    ['an entry of the job nobody knows', { ...EMPTY, extra: 1 }, 'extra: nichework has no such entry.'],
    [
      'a day that does not exist',
      { ...EMPTY, created: '2026-02-31' },
      'line 4, created: "2026-02-31" does not fit here.',
    ],
    ['no version', { id: 'x' }, 'a job file of nichework begins with "schema": 1.'],
    ['a version in quotes', { ...EMPTY, schema: '1' }, 'schema: "1" is not a version'],
    ['a version of half a step', { ...EMPTY, schema: 5.5 }, 'schema: 5.5 is not a version'],
    ['a version before the first', { ...EMPTY, schema: -1 }, 'schema: -1 is not a version'],
    ['a list', [], 'there is no "schema"'],
    ['nothing', '', 'the file is empty.'],
    ['half a file', '{"schema": 1,\n "facts": {', 'line 2: this is not JSON'],
  ])('names the place and says what is allowed: %s', (_what, value, said) => {
    expect(faultsOf(value).join('\n')).toContain(said)
  })

  it('names all faults at once, each with its line', () => {
    const faults = faultsOf({ ...EMPTY, facts: { job: { units: 'cubits' } }, choices: { job: { inchStep: 1 } } })
    expect(faults).toHaveLength(2)
    for (const fault of faults) expect(fault).toMatch(/^line \d+, /)
  })

  it('leaves a newer job untouched and says which version it needs', () => {
    for (const schema of [SCHEMA_VERSION + 1, SCHEMA_VERSION + 100]) {
      expect(() => open({ ...EMPTY, schema })).toThrow(JobTooNew)
      expect(() => open({ ...EMPTY, schema })).toThrow(`schema ${schema}; this one reads up to ${SCHEMA_VERSION}`)
    }
  })

  it('names UTF-16 and bytes that are no text', () => {
    expect(() => openJob(Buffer.from(`\ufeff${JSON.stringify(EMPTY)}`, 'utf16le'), 'job.json')).toThrow('UTF-16')
    expect(() => openJob(Uint8Array.from([0x89, 0x50, 0x4e, 0x47]), 'job.json')).toThrow('not text in UTF-8')
  })

  it('ends in a job or in planned words, whatever the bytes', () => {
    const document = fc.oneof(
      fc.uint8Array({ maxLength: 300 }),
      fc.json().map(bytesOf),
      fc
        .dictionary(fc.constantFrom(...Object.keys(EMPTY)), fc.jsonValue())
        .map((entries) => bytesOf({ ...EMPTY, ...entries })),
      fc.nat().map((cut) => bytesOf(EMPTY).subarray(0, cut % 150)),
    )
    // biome-ignore lint/nursery/noFloatingPromises: a property without async gives no promise
    fc.assert(
      fc.property(document, (bytes) => {
        try {
          openJob(bytes, 'job.json')
        } catch (error) {
          expect(error).toBeInstanceOf(NicheworkError)
          expect(String(error)).not.toMatch(/\b(invalid|illegal|failed to|undefined|NaN)\b/i)
        }
      }),
      { numRuns: 2000 },
    )
  })
})
