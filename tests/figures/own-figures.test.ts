import { describe, expect, it } from 'vitest'
import { figuresIn } from '../../src/figures/figures.ts'
import { changedOwn, type OwnFigure, ownFiguresSchema } from '../../src/figures/own-figures.ts'
import { recording } from '../../src/things/formula.ts'
import { inches, millimetres } from '../../src/units/length.ts'

const because = 'our way'
const faults = (own: Readonly<Record<string, object>>): readonly string[] => {
  const read = ownFiguresSchema.safeParse(own)
  return read.success ? [] : read.error.issues.map((issue) => issue.message)
}
const fault = (id: string, figure: object): string | undefined => faults({ [id]: { because, ...figure } })[0]

describe('a figure of a person’s own', () => {
  it('is written as the published one is: lengths as text, numbers as they are', () => {
    expect(
      faults({
        'filler.nominal': { inch: '1 1/4 in', because },
        'saw.kerf': { inch: '3/32 in', metric: '2.5 mm', because },
        'density.mdf': { value: 720, unit: 'kg/m3', because },
        'price.spray-area': { inchValue: 1100, because },
        'coating.water-enamel.top.recoat-most': { value: 72, because: 'its sheet' },
      }),
    ).toEqual([])
  })

  it.each([
    ['filler.nominl', { inch: '1 in' }, 'no figure of this name. Nearest: filler.nominal'],
    ['filler.nominal', {}, 'it says no value. Write it: "filler.nominal": {"inch": "1 in", "metric": "25 mm"'],
    ['filler.nominal', { value: 1 }, '"value" is not how it is written. Write it: "filler.nominal"'],
    ['filler.nominal', { inch: '1 1/4' }, '"1 1/4" is not a length: write 1 1/4 in, 3/8 in or 32 mm'],
    ['filler.nominal', { inch: 'a lot' }, 'is not a length'],
    ['filler.nominal', { inch: '3/0 in' }, 'is not a length'],
    ['filler.nominal', { inch: '1 in', unit: 'in' }, 'the unit of a length stands in the text'],
    ['density.mdf', { value: 720, unit: 'lb/ft3' }, '"lb/ft3" is not its unit: this figure is in kg/m3'],
    ['saw.kerf', { inch: '0 in' }, 'cannot be meant: published is 1/8 in, and it may be from 1 mm to 13 mm'],
    [
      'density.mdf',
      { value: 74 },
      'cannot be meant: published is 750 kg/m3, and it may be from 75 kg/m3 to 7500 kg/m3',
    ],
    ['price.tape', { value: 720.5 }, '720.5 cents is not whole: write 720 or 721'],
    ['lead.panels', { value: 2.5 }, 'is not whole: write 2 or 3'],
    ['transfer.hand', { value: 1.2 }, 'may be from 0.09 to 1'],
  ])('%s %o', (id, figure, says) => {
    expect(fault(id, figure)).toContain(says)
  })

  it('may be a tenth to ten times of what is published', () => {
    expect(fault('density.mdf', { value: 75 })).toBeUndefined()
    expect(fault('density.mdf', { value: 7500 })).toBeUndefined()
    expect(fault('density.mdf', { value: 7501 })).toContain('cannot be meant')
  })

  it('a safety figure changes only to its safe side: the other is refused with both values and what to do', () => {
    // 40 CFR 745: before 1978. A later year makes more houses old; an earlier one fewer.
    expect(fault('lead.year', { value: 1985 })).toBeUndefined()
    expect(fault('lead.year', { value: 1978 })).toBeUndefined()
    const said = fault('lead.year', { value: 1960 })
    expect(said).toContain('1960 year is less than the published 1978 year (40 CFR 745')
    expect(said).toContain('write 1978 year or more, or take it out')
    expect(said).toContain('Local code, the appliance manual and licensed practice govern.')
    // NIOSH 94-110: 23 kg for one; less is safer.
    expect(fault('lift.alone', { value: 20 })).toBeUndefined()
    expect(fault('lift.alone', { value: 25 })).toContain('25 kg is more than the published 23 kg')
  })

  it('says why in some words', () => {
    expect(ownFiguresSchema.safeParse({ 'filler.nominal': { inch: '1 1/4 in' } }).success).toBe(false)
    expect(faults({ 'filler.nominal': { inch: '1 1/4 in', because: '' } })).toHaveLength(1)
  })
})

describe('the figures of one job', () => {
  const own = { 'filler.nominal': { inch: '1 1/4 in', because: 'our walls are worse' } }

  it('are the published ones with the person’s own over them, in the unit system they were given for', () => {
    expect(figuresIn('inch', own).length('filler.nominal')).toBe(inches(1, 1, 4))
    expect(figuresIn('metric', own).length('filler.nominal')).toBe(millimetres(25))
    expect(figuresIn('inch', own).length('filler.least')).toBe(inches(0, 3, 8))
    expect(figuresIn('inch', own).own.map((row) => row.id)).toEqual(['filler.nominal'])
  })

  it('do not leak into another job, whichever is read first', () => {
    const [mine, theirs] = [figuresIn('inch', own), figuresIn('inch')]
    expect(mine.length('filler.nominal')).toBe(inches(1, 1, 4))
    expect(theirs.length('filler.nominal')).toBe(inches(1))
    expect(mine.length('filler.nominal')).toBe(inches(1, 1, 4))
    expect(figuresIn('inch').length('filler.nominal')).toBe(inches(1))
  })

  it('are noted as what they are: your setting, with the reason', () => {
    const { workings } = recording(() => figuresIn('inch', own).length('filler.nominal'))
    expect(workings.map(({ id, source }) => [id, source])).toEqual([
      ['filler.nominal', 'your setting: our walls are worse'],
    ])
  })
})

it('what changed between two sets is named: added, taken out, another value, another reason', () => {
  const figure = (value: number, why = because): OwnFigure => ({ value, because: why })
  const before = { 'a.same': figure(1), 'a.gone': figure(1), 'a.value': figure(1), 'a.reason': figure(1) }
  const after = { 'a.same': figure(1), 'a.new': figure(1), 'a.value': figure(2), 'a.reason': figure(1, 'new') }
  expect(changedOwn(before, after)).toEqual(['a.gone', 'a.new', 'a.reason', 'a.value'])
  expect(changedOwn(before, before)).toEqual([])
})
