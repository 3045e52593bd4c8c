import { describe, expect, it } from 'vitest'
import { emptyJob, withOwnFigures } from '../../src/job/job.ts'
import { openJob } from '../../src/job/open.ts'
import { openOwnFigures } from '../../src/job/open-own-figures.ts'
import { InputUnreadable } from '../../src/things/failure.ts'

const bytes = (value: unknown) => new TextEncoder().encode(JSON.stringify(value, undefined, 1))
const own = { 'filler.nominal': { inch: '1 1/4 in', because: 'our walls' } }
const job = emptyJob('test-job', '2026-01-05')

const faultsOf = (work: () => unknown): readonly string[] => {
  try {
    work()
  } catch (error) {
    if (error instanceof InputUnreadable) return error.faults
    throw error
  }
  return []
}

describe('a job', () => {
  it('carries the figures it was begun with, through the file and back', () => {
    const begun = withOwnFigures(job, own)
    expect(openJob(bytes(begun), 'job.json')).toEqual(begun)
  })

  it('begun without any carries none, and can be brought back to none', () => {
    expect(withOwnFigures(job, {})).toEqual(job)
    expect(withOwnFigures(withOwnFigures(job, own), {})).toEqual(job)
  })

  it('with a figure on the unsafe side, written in by hand, is refused by line and name', () => {
    const unsafe = withOwnFigures(job, { 'lead.year': { value: 1900, because: 'quicker' } })
    expect(faultsOf(() => openJob(bytes(unsafe), 'job.json'))).toEqual([
      expect.stringMatching(/^line \d+, figures\.lead\.year: .*1900.*1978.*safe side/),
    ])
  })
})

describe('own-figures.json', () => {
  it('is read', () => {
    expect(openOwnFigures(bytes(own), 'own-figures.json')).toEqual(own)
    expect(openOwnFigures(bytes({}), 'own-figures.json')).toEqual({})
  })

  it('names every fault with its line', () => {
    const wrong = { 'filler.nominl': { inch: '1 in', because: 'x' }, 'saw.kerf': { inch: '1/8', because: 'y' } }
    const faults = faultsOf(() => openOwnFigures(bytes(wrong), 'own-figures.json'))
    expect(faults).toHaveLength(2)
    expect(faults[0]).toMatch(/^line 2, filler\.nominl: there is no figure of this name/)
    expect(faults[1]).toMatch(/^line 6, saw\.kerf: "inch": "1\/8" is not a length/)
  })

  it.each([
    ['a list', [], 'does not fit here'],
    ['a bare value', { 'filler.nominal': '1 in' }, 'does not fit here'],
    ['no reason', { 'filler.nominal': { inch: '1 in' } }, 'because: nothing does not fit here'],
    ['a field of its own', { 'filler.nominal': { inch: '1 in', because: 'x', colour: 'red' } }, 'no such entry'],
  ])('%s is refused in words', (_, content, says) => {
    expect(faultsOf(() => openOwnFigures(bytes(content), 'own-figures.json'))[0]).toContain(says)
  })
})
