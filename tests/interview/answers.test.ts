import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readAnswers } from '../../src/interview/answers.ts'
import { jobSchema } from '../../src/job/job.ts'
import { day } from '../../src/units/day.ts'
import { inches } from '../../src/units/length.ts'

const FALLBACK = { id: 'test-job', today: day('2026-11-12') }
const file = (answers: Record<string, unknown>, more: object = {}) => ({ schema: 'answers-1', answers, ...more })

describe.each(['alcoves-inch', 'niche-metric'])('the demo %s', (name) => {
  const read = readAnswers(JSON.parse(readFileSync(`demo/${name}/answers.json`, 'utf8')), FALLBACK)
  it('is read without a fault, into a job the schema takes', () => {
    expect(read.faults).toEqual([])
    expect(jobSchema.safeParse(read.job).success).toBe(true)
  })
})

it('reads rows of a table, and figures by the units of the job wherever they stand in the file', () => {
  const { job, faults } = readAnswers(
    file({ 'a.widths': ['4 41 1/4 41 3/8 0', '36 41 - -'], 'job.bays': 'alcove', 'job.units': 'inches' }),
    FALLBACK,
  )
  expect(faults).toEqual([])
  expect(job.facts.a?.widths).toEqual([
    { height: inches(4), back: inches(41, 1, 4), front: inches(41, 3, 8), left: inches(0) },
    { height: inches(36), back: inches(41) },
  ])
})

it('gives all faults at once, each with its key, the words typed and what works', () => {
  const { faults } = readAnswers(
    file({
      'job.bays': 'alcove',
      'a.widhts': ['4 41'],
      'a.returns': '14',
      'job.startDay': '31 feb',
      'b.fuel': 'gas',
      'job.boxesWay': 'steal',
    }),
    FALLBACK,
  )
  expect(faults).toEqual([
    'a.widhts: no question has this name. Nearest: a.widths.',
    'a.returns (alcove, return depths): "14": One value for two: left, right. Type them all on one line.',
    'job.startDay (start): "31 feb": February 2026 has 28 days.',
    expect.stringMatching(/^b\.fuel: no question has this name\./),
    'job.boxesWay (boxes): "steal": "steal" is not in the list. Type its number, 1 to 2, or how it begins. One of: 1 make · 2 buy.',
  ])
})

it('says what an answers file looks like when it does not', () => {
  expect(readAnswers([], FALLBACK).faults).toHaveLength(1)
  expect(readAnswers(file({}, { colour: 1 }), FALLBACK).faults[0]).toMatch(/^colour: an answers file has schema/)
  expect(readAnswers({ schema: 'answers-2', answers: {} }, FALLBACK).faults).toEqual([
    'schema: "answers-1" stands here.',
  ])
})

it('says which cautions there are when one is confirmed that nobody asked', () => {
  expect(readAnswers(file({}, { confirm: ['no-such@job.title'] }), FALLBACK).faults[0]).toMatch(
    /^confirm no-such@job\.title: this job does not ask it\./,
  )
})
