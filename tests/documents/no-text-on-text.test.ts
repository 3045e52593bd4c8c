import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/plan/plan.ts'
import { allFiles, breastPlan, flatPlan, fourBayPlan, heldPlan, inchPlan, metricPlan } from './fixture.ts'
import { pdfPages, pdfTextBoxes, textsThatCollide } from './pdf-text.ts'

const WALLS: readonly (readonly [string, () => Plan])[] = [
  ['two alcoves and a breast, letter', inchPlan],
  ['the same with a missing measurement', heldPlan],
  ['a niche, A4', metricPlan],
  ['four bays', fourBayPlan],
  ['a flat wall', flatPlan],
  ['a breast alone', breastPlan],
]

describe('no words stand on other words, on any page', () => {
  it.each(WALLS)(
    '%s',
    async (_name, make) => {
      const files = (await allFiles(make())).filter((f) => f.path.endsWith('.pdf'))
      expect(files.length).toBeGreaterThan(3)
      const found: string[] = []
      for (const { path, bytes } of files) {
        const pages = (await pdfPages(bytes)).length
        for (let page = 1; page <= pages; page += 1) {
          for (const pair of textsThatCollide(await pdfTextBoxes(bytes, page))) found.push(`${path} ${page}: ${pair}`)
        }
      }
      expect(found).toEqual([])
    },
    60_000,
  )
})
