import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { everyQuestion } from '../../src/interview/asked.ts'
import { askingOf } from '../../src/interview/asking.ts'
import { enter } from '../../src/interview/enter.ts'
import { exampleRow } from '../../src/interview/example-row.ts'
import { units } from '../../src/job/chapters/job.ts'
import { bays } from '../../src/job/chapters/wall.ts'
import { emptyJob, withAnswer } from '../../src/job/job.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { inches, millimetres } from '../../src/units/length.ts'
import { TODAY } from './play.ts'

const wall = withAnswer(emptyJob('test-job', TODAY), bays, 'job', [
  { id: 'a', kind: 'alcove' },
  { id: 'b', kind: 'breast' },
  { id: 'c', kind: 'flat' },
])
const inchJob = withAnswer(wall, units, 'job', 'inch')
const metricJob = withAnswer(wall, units, 'job', 'metric')

const at = (key: string, job = inchJob) => {
  const question = everyQuestion(job).find((q) => q.key === key)
  if (question === undefined) throw new Error(`no question ${key}`)
  return askingOf(question, job, makePlan(job, 'quick'), TODAY)
}
const type = (key: string, text: string, job = inchJob) => enter(text, at(key, job))
const value = (key: string, text: string, job = inchJob) => {
  const entered = type(key, text, job)
  return entered.kind === 'refused' ? entered.says : entered.value
}

describe('whole numbers in a table', () => {
  it('takes a year and how many, a dash or nothing for either, and refuses what is none', () => {
    const row = 'cabinet 40 34 20 screwed painted wire'
    const read = {
      what: 'cabinet',
      length: inches(40),
      height: inches(34),
      depth: inches(20),
      fixing: 'screwed',
      coat: 'painted',
      holds: 'wire',
    }
    expect(value('a.removals', `${row} 1962 2`)).toEqual([{ ...read, year: 1962, count: 2 }])
    expect(value('a.removals', `${row} - 2`)).toEqual([{ ...read, count: 2 }])
    expect(value('a.removals', row)).toEqual([read])
    expect(value('a.removals', `${row} 62`)).toMatch(/"62" is not a whole number from 1500 to 2100/)
    expect(value('a.removals', `${row} 1962 two`)).toMatch(/how many: "two" is not a whole number/)
  })
})

describe('lengths', () => {
  it('echoes both units when another one was written', () => {
    expect(type('b.mantelLength', '1048 mm')).toEqual({
      kind: 'answer',
      value: millimetres(1048),
      echo: '1048 mm (about 41 1/4 in)',
    })
  })
  it('holds 1048 in an inch job and offers millimetres', () => {
    expect(type('b.mantelLength', '1048')).toEqual({
      kind: 'held',
      value: millimetres(1048),
      echo: '41 17/64 in',
      says: '1048 in is 87 ft. Did you mean 1048 mm (about 41 1/4 in)? Enter = yes.',
    })
  })
  it('never turns a figure of two digits into another unit', () => {
    expect(value('b.mantelThickness', '36')).toMatch(/^.*: 36 in is more than it can be\. It is between/)
    expect(type('c.flatLength', '99', metricJob)).toMatchObject({ kind: 'refused' })
    expect(type('c.flatLength', '3048')).toMatchObject({ kind: 'held', value: millimetres(3048) })
  })
  it('says that a comma was read as a decimal mark', () => {
    expect(value('a.floor', '0,0')).toMatch(/ends before: drop\. The comma in 0,0 was read as a decimal mark/)
    expect(value('a.floor', '44,3/16')).toMatch(/"44,3\/16" is not a length\. The comma in 44,3 was read/)
    expect(type('a.widths', '36 41,41')).toMatchObject({
      kind: 'held',
      says: expect.stringContaining('41,41 was read'),
    })
    expect(value('a.floor', '0, 0')).toEqual([{ x: inches(0), drop: inches(0) }])
    expect(value('a.returns', '14,15')).toMatch(/comma in 14,15/)
  })
  it('names the question, the value, and what is allowed', () => {
    expect(value('b.mantelDepth', '30')).toBe('depth: 30 in is more than it can be. It is between 2 in and 24 in.')
    expect(value('b.mantelDepth', '-3')).toBe('depth: -3 is less than 0. It cannot lean or drop here.')
  })
  it('takes a lean below 0 where the question allows one', () => {
    expect(value('a.squareLeft', '-1/8')).toBe(-inches(0, 1, 8))
  })
  it('asks which of two is meant', () => {
    expect(value('b.mantelDepth', '8 9')).toBe('Two lengths for one: 8 and 9. Which one is it?')
    expect(value('a.returns', '14 15 16')).toBe('Three values for two: left, right. Which one is left out?')
  })
  it('numbers what it read', () => {
    expect(type('a.returns', '14 3/4 14-5/8')).toMatchObject({ echo: 'left 14 3/4 in, right 14 5/8 in' })
  })
})

describe('rows of a table', () => {
  it('reads words by their beginning', () => {
    const device = {
      what: 'outlet',
      wall: 'back',
      x: inches(12),
      z: inches(13, 1, 2),
      width: inches(2, 3, 4),
      height: inches(4, 1, 2),
    }
    expect(value('a.devices', 'out b 12 13 1/2 2 3/4 4 1/2 cut through')).toEqual([{ ...device, fate: 'cut-through' }])
    expect(value('a.devices', 'out b 12 13 1/2 2 3/4 4 1/2 cut')).toEqual([{ ...device, fate: 'cut-through' }])
    expect(value('a.devices', 'out b 12 13 1/2 2 3/4 4 1/2 m')).toMatch(/ends before: becomes|more than it can be/)
    expect(value('a.devices', 'none')).toEqual([])
  })
  it('parts a figure from a lean below 0', () => {
    expect(value('a.widths', '4 41 41 0 -1/8')).toEqual([
      { height: inches(4), back: inches(41), front: inches(41), left: inches(0), right: -inches(0, 1, 8) },
    ])
  })
  it('says in which row and cell something is wrong', () => {
    expect(value('a.widths', '4 41\n- 41')).toBe(
      'Row 2: above floor: a figure is needed here, a dash cannot stand for it.',
    )
    expect(value('a.floor', '4')).toBe('The row ends before: drop.')
    expect(value('a.floor', '4 5 6')).toBe('"6" is one more than the columns: from the left, drop.')
    expect(value('a.devices', 'tree back 1 2 3 4 keep')).toBe(
      'what: "tree" is not one of them. Type outlet, switch, data, grille, gas tap, pipe.',
    )
  })
})

describe('the example of each table', () => {
  it.each([
    ['inch', inchJob],
    ['metric', metricJob],
  ] as const)('reads as a row in an %s job', (units, job) => {
    for (const { key, field } of everyQuestion(job)) {
      if (field.entry.kind !== 'table') continue
      expect(type(key, exampleRow(field.entry.columns, units), job), key).toMatchObject({ kind: 'answer' })
    }
  })
})

describe('the wall', () => {
  it('reads words, initials and trade words', () => {
    const kinds = (text: string) => {
      const found = value('job.bays', text)
      return Array.isArray(found) ? found.map((b: { kind: string }) => b.kind).join(' ') : found
    }
    for (const text of [
      'alcove breast alcove',
      'a b a',
      'Alcove, chimney breast, alcove',
      'alc-br-alc',
      'alcove|breast|alcove',
    ])
      expect(kinds(text)).toBe('alcove breast alcove')
    expect(kinds('a')).toBe('alcove')
    expect(kinds('flat wall')).toBe('flat')
    expect(kinds('window')).toBe(
      '"window" is not a kind of bay: alcove, breast or flat. Type the words in order, like: alcove breast alcove.',
    )
  })
  it('keeps the ids of bays that stay, and never gives an old id to a new bay', () => {
    expect(value('job.bays', 'breast flat alcove')).toEqual([
      { id: 'b', kind: 'breast' },
      { id: 'c', kind: 'flat' },
      { id: 'd', kind: 'alcove' },
    ])
  })
})

describe('other kinds', () => {
  it.each([
    ['job.units', '2', 'metric'],
    ['job.units', 'milli', 'metric'],
    ['job.inchStep', '1/32', '1/32'],
    ['job.inchStep', '3', '1/64'],
    ['b.mantel', 'Y', true],
    ['b.mantel', 'no', false],
    ['b.mantelLayers', 'two', 2],
    ['job.validDays', '30 days', 30],
    ['job.looseShelves', '3 shelves', 3],
    ['job.looseShelves', 'two loose shelves', 2],
    ['job.looseShelves', '2.5 shelves', '2.5 shelves is not a whole number. It is between 0 and 12.'],
    ['job.looseShelves', '2 and a half', '"2 and a half" is not a number. It is between 0 and 12.'],
    ['b.mantelLayers', '9', '9 is more than it can be. It is between 1 and 4.'],
    ['job.profit', '15 %', 15],
    ['job.profit', '15,5', 15.5],
    ['job.hourRate', '$68', 6800],
    ['job.dayHours', '7:30', 7.5],
    ['job.startDay', '10 dec', '2026-12-10'],
    ['a.widths', 'nm', 'not measured'],
    ['b.mantelDepth', 'nm', 'This is a decision, not a measurement: type it, or Enter takes what is suggested.'],
    ['a.wallKind', 'm', 'masonry'],
  ])('%s: %s', (key, text, expected) => {
    expect(value(key, text)).toEqual(expected)
  })
  it('takes escape sequences and hidden marks out of words, and says so', () => {
    expect(type('job.clientName', 'A\u001B[31mnn\u001B]52;c;aGk=\u0007e\u202E')).toEqual({
      kind: 'answer',
      value: 'Anne',
      echo: 'Anne',
      note: 'Control characters were taken out.',
    })
  })
  it('refuses what is too long with its limit', () => {
    expect(value('job.title', 'x'.repeat(61))).toBe('Too long for this question (limit 60 characters).')
    expect(value('b.mantelDepth', '1'.repeat(1_000_000))).toBe('Too long for this question (limit 200 characters).')
  })
})

describe('whatever is typed', () => {
  const banned = /\b(invalid|illegal|forbidden|failed to|please|sorry|oops|unexpected|null|undefined|NaN)\b/i
  const questions = [...everyQuestion(inchJob), ...everyQuestion(metricJob)]
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc.stringMatching(/^[0-9 /.,'"a-z+-]{0,40}$/),
    fc.constantFrom('nm', 'none', '0', '1', '41 1/4', '4 41 41', '5 6\n7 8', 'yes', '10 dec'),
  )
  it('every question answers in words a person can use, and keeps only what the job file takes', () => {
    fc.assert(
      fc.property(fc.nat(questions.length - 1), text, fc.boolean(), (n, typed, metric) => {
        const question = questions[n]
        if (question === undefined) return true
        const job = metric ? metricJob : inchJob
        const entered = enter(typed, askingOf(question, job, { show: show(metric), used: new Map() }, TODAY))
        if (entered.kind === 'refused')
          return entered.says !== '' && !banned.test(entered.says.replace(typed.trim(), '').replace(/"[^"]*"/g, ''))
        return (
          entered.value === undefined ||
          entered.value === 'not measured' ||
          question.field.schema.safeParse(entered.value).success
        )
      }),
      { numRuns: 3000 },
    )
  })
  const shows = { inch: makePlan(inchJob, 'quick').show, metric: makePlan(metricJob, 'quick').show }
  const show = (metric: boolean) => (metric ? shows.metric : shows.inch)
})
