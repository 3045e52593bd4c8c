import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { makeOrBuySheet } from '../../../src/documents/costing/make-or-buy-sheet.ts'
import { type Job, jobSchema } from '../../../src/job/job.ts'
import { makeOrBuy } from '../../../src/plan/make-or-buy/make-or-buy.ts'

const demo = jobSchema.parse(JSON.parse(readFileSync('demo/alcoves-inch/job.json', 'utf8'))) as Job

it('two lines a thing: the way it is now is marked, money and dates of both, where they cost alike', () => {
  const compared = makeOrBuy(demo)
  const { rows, columns } = makeOrBuySheet(compared, 'USD')
  expect(rows).toHaveLength(2 * compared.length)
  for (const [i, one] of compared.entries()) {
    const [make, buy] = [rows[2 * i], rows[2 * i + 1]]
    expect([make?.[1], buy?.[1]]).toEqual(one.now === 'buy' ? ['make', 'buy (now)'] : ['make (now)', 'buy'])
    expect(make?.[2]).toEqual({ value: one.make.money / 100, format: 'money' })
    expect(buy?.[6]).toEqual({ value: one.buy.price / 100, format: 'money' })
    expect(make?.at(-1)).toMatch(/break-even/)
    expect(buy?.at(-1)).toMatch(/buying is cheaper below [\d,.]+ USD a |making is cheaper at any quote/)
    for (const row of [make, buy]) expect(row).toHaveLength(columns.length)
  }
})
