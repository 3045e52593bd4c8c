import { describe, expect, it } from 'vitest'
import * as z from 'zod'
import { checkedFile } from '../../src/figures/checked-file.ts'
import { checkedRow } from '../../src/figures/checked-row.ts'
import { coatFigure, coatingTable } from '../../src/figures/coating-table.ts'
import { publishedFiles, publishedRows } from '../../src/figures/published.ts'

const row = {
  id: 'filler.nominal',
  says: 'wall filler',
  inch: '1 in',
  metric: '25 mm',
  known: 'practice',
  source: 'common practice, no source',
}
const read = (content: object) => () => checkedRow('shared/figures/habits.json', 6, content)

describe('a file of figures', () => {
  it.each([
    [{ ...row, source: undefined }, 'row 7 (filler.nominal), field source'],
    [{ ...row, metric: 'about 25' }, 'row 7 (filler.nominal), field metric: "about 25" is not a length'],
    [{ ...row, known: 'guessed' }, 'row 7 (filler.nominal), field known'],
    [{ ...row, hue: 'green' }, 'hue has no place here'],
    [{ ...row, known: 'read' }, 'what has no source was not read'],
    [{ ...row, known: 'yours' }, 'a published row is not yours'],
    [{ ...row, change: 'safe-side' }, 'field safe'],
    [{ ...row, safe: 'more' }, 'field safe'],
    [
      { id: 'density.mdf', says: 'density', value: '750', unit: 'kg/m3', known: 'practice', source: 'habit' },
      'row 7 (density.mdf), field value',
    ],
    [{ says: 'nothing' }, 'row 7, field id'],
  ])('that is not as it must be is refused by file, row and field: %o', (content, says) => {
    expect(read(content)).toThrow(`shared/figures/habits.json, ${says.startsWith('row') ? says : 'row 7'}`)
    expect(read(content)).toThrow(says)
  })

  it('that is as it must be is taken', () => {
    expect(read(row)()).toEqual(row)
  })

  it('deep inside: the list, the row by its id, the field', () => {
    const file = z.object({ systems: z.array(z.object({ id: z.string(), wet: z.number() })) })
    expect(() =>
      checkedFile('shared/coatings.json', file, {
        systems: [
          { id: 'a', wet: 1 },
          { id: 'b', wet: 'x' },
        ],
      }),
    ).toThrow('shared/coatings.json, field systems, row 2 (b), field wet:')
  })
})

describe('the published figures', () => {
  it('stand each in one file, and every file holds some', () => {
    const ids = publishedFiles().flatMap((file) => file.rows.map((r) => r.id))
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids.length).toBe(publishedRows().size)
    for (const { file, rows } of publishedFiles()) expect(rows.length, file).toBeGreaterThan(0)
  })

  it('of a rule name the region it holds in, and change only to a side they name', () => {
    const rules = [...publishedRows().values()].filter(({ source }) => /\b(IRC|CFR|NIOSH)\b/.test(source))
    expect(rules.length).toBeGreaterThan(3)
    for (const rule of rules) expect(rule.region, rule.id).toBeDefined()
    for (const safety of [...publishedRows().values()].filter((r) => r.change === 'safe-side'))
      expect(['more', 'less'], safety.id).toContain(safety.safe)
  })

  it('hold every coat of every coating: coats, film, least and most hours', () => {
    for (const system of coatingTable().systems) {
      for (const layer of system.layers) {
        for (const what of ['coats', 'wet-film', 'recoat-least', 'recoat-most'])
          expect(publishedRows().has(coatFigure(system.id, layer.id, what))).toBe(true)
      }
    }
  })
})
