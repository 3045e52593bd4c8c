import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inches, type Length, millimetres, NM_PER_INCH, nanometres } from '../../src/units/length.ts'
import { parseLength, parseLengths } from '../../src/units/parse-length.ts'
import { showLength, showLengthWithUnit, type UnitSystem } from '../../src/units/show-length.ts'

const readOf = (typed: string, units: UnitSystem) => {
  const found = parseLength(typed, units)
  return found.kind === 'read' ? found.value : found.says
}

/** Spellings of 41 1/4 in: the row of the house's own table, varied by unit word, mark, space and case. */
const FORTY_ONE_AND_A_QUARTER = [
  '41 1/4',
  '41-1/4',
  '41 - 1/4',
  '41   1/4',
  ' 41 1/4 ',
  '41.25',
  '41,25',
  '41.250',
  '41 1/4 in',
  '41 1/4in',
  '41 1/4 IN',
  '41 1/4 inches',
  '41 1/4"',
  '41 1/4 in.',
  '41 2/8',
  '41 16/64',
  '41¼',
  '41 ¼',
  '41 1⁄4',
  '41\u00A01/4',
  '41\u20111/4',
  '41 1/4”',
  '41 1/4″',
  "41 1/4''",
  `3' 5 1/4"`,
  `3'5 1/4"`,
  `3'-5 1/4"`,
  `3' - 5 1/4"`,
  '3ft 5-1/4in',
  '3 ft 5 1/4 in',
  '3FT 5.25IN',
  '3 feet 5 1/4 inches',
  '3 foot 5 1/4',
  '3’5¼”',
  '3′ 5¼″',
  "3' 5.25",
  '41 1/4 ins',
]

describe('41 1/4 in, as people write it in an inch job', () => {
  it.each(FORTY_ONE_AND_A_QUARTER)('%s', (typed) => {
    expect(readOf(typed, 'inch')).toBe(inches(41, 1, 4))
  })
})

describe('1048 mm, in either job when the unit is written', () => {
  const spellings =
    '1048mm|1048 mm|1048MM|104.8 cm|104.8cm|104,8 cm|104,8cm|1.048m|1.048 m|1.0480 m|1048.0 mm|1048,0 mm|1048 millimetres|1048 millimeters|1048 millimetre|104.8 centimetres|104.8 CM|1048\u00A0mm|1048\u2009mm|1.048 metres|1.048 meter'
  it.each(spellings.split('|'))('%s', (typed) => {
    expect(readOf(typed, 'inch')).toBe(millimetres(1048))
    expect(readOf(typed, 'metric')).toBe(millimetres(1048))
  })
  it('and bare in a metric job', () => {
    expect(readOf('1048', 'metric')).toBe(millimetres(1048))
    expect(readOf('1048.5', 'metric')).toBe(millimetres(1048.5))
  })
})

describe('what is never guessed', () => {
  it.each([
    ['1,048', 'inch', '1,048 can be read two ways. Type 1048 or 1.048.'],
    ['1,048', 'metric', '1,048 can be read two ways. Type 1048 or 1.048.'],
    ['41 1/3', 'inch', 'A tape has halves to 64ths. Nearest to 41 1/3: 41 21/64.'],
    ['41 5/4', 'inch', 'A tape has halves to 64ths. Nearest to 41 5/4: 42 1/4.'],
    ['41 1/0', 'inch', '41 1/0 divides by 0. A tape has halves to 64ths.'],
    ['41 1/4', 'metric', '41 1/4 looks like inches. Type "41 1/4 in", or millimetres with a point.'],
    ['1.234,5', 'metric', '1.234,5 has two decimal marks. Type one.'],
    ["3' 14", 'inch', 'Inches behind feet are fewer than 12; 14 stands there. Type it in inches alone.'],
    ['abc', 'inch', `"abc" is not a length. Type it like 41 1/4, 3' 5 1/4", 1048 mm or 104.8 cm.`],
    ['41x', 'inch', `"41x" is not a length. Type it like 41 1/4, 3' 5 1/4", 1048 mm or 104.8 cm.`],
    ['', 'inch', 'A length is needed, like 41 1/4 or 1048 mm.'],
  ] as const)('%s in an %s job', (typed, units, says) => {
    expect(readOf(typed, units)).toBe(says)
  })
  it('a figure longer than any wall', () => {
    expect(readOf('9'.repeat(400), 'inch')).toMatch(/too many digits/)
    expect(readOf('999999999 m', 'inch')).toMatch(/longer than any wall/)
    expect(readOf('1/999999999999', 'inch')).toMatch(/halves to 64ths/)
  })
})

describe('several on one line', () => {
  const valuesOf = (typed: string) => {
    const found = parseLengths(typed, 'inch')
    return found.kind === 'read' ? found.value.map((f) => f.value) : found.says
  }
  it.each([
    ['41 1/4 41 40 7/8', [inches(41, 1, 4), inches(41), inches(40, 7, 8)]],
    ['41 1/4, 41, 40 7/8', [inches(41, 1, 4), inches(41), inches(40, 7, 8)]],
    ['41 1/4; 41; 40-7/8', [inches(41, 1, 4), inches(41), inches(40, 7, 8)]],
    [`3' 4' 5"`, [inches(36), inches(53)]],
    ['0 -1/8', [inches(0), nanometres(-inches(0, 1, 8))]],
    ['-3', [nanometres(-inches(3))]],
    ['1 1/2 2 1/2', [inches(1, 1, 2), inches(2, 1, 2)]],
  ] as const)('%s', (typed, values) => {
    expect(valuesOf(typed)).toEqual(values)
  })
})

describe('shown and read again', () => {
  const systems = fc.constantFrom<UnitSystem>('inch', 'metric')
  it('gives the same integer for every 64th and every tenth of a millimetre', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 300 * 64 }), (n) => {
        const v = nanometres((n * NM_PER_INCH) / 64)
        return readOf(showLength(v, 'inch'), 'inch') === v && readOf(showLengthWithUnit(v, 'inch'), 'metric') === v
      }),
      { numRuns: 5000 },
    )
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 80_000 }), (n) => {
        const v = nanometres(n * 100_000)
        return readOf(showLength(v, 'metric'), 'metric') === v && readOf(showLengthWithUnit(v, 'metric'), 'inch') === v
      }),
      { numRuns: 5000 },
    )
  })
  it('what is printed of any length prints the same again', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 8e9 }), systems, (n, units) => {
        const shown = showLength(nanometres(n), units)
        const again = readOf(shown, units)
        return typeof again === 'number' && showLength(again as Length, units) === shown
      }),
      { numRuns: 5000 },
    )
  })
})

it('reads any line, in time that grows with its length only', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (typed) => {
      const found = parseLengths(typed, 'inch')
      return found.kind === 'read' || found.says !== ''
    }),
  )
  const nasty = [
    '1 '.repeat(50_000),
    "1'".repeat(50_000),
    '1-'.repeat(50_000),
    ' '.repeat(100_000),
    '1/'.repeat(50_000),
  ]
  const started = performance.now()
  for (const typed of nasty) parseLengths(typed, 'inch')
  expect(performance.now() - started).toBeLessThan(5000)
})
