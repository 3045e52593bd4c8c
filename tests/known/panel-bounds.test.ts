import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as z from 'zod'
import type { Bed, Block } from '../../src/plan/panels/block.ts'
import { pack } from '../../src/plan/panels/pack.ts'
import { fewestSheets } from '../../src/plan/panels/sheet-bound.ts'
import { faultsOf } from '../plan/panels/saw-check.ts'

/**
 * Open test instances of two-dimensional bin packing with through-cuts, turning allowed (2BP|R|G), and invented shop jobs.
 * Sources stand in the files: Berkey and Wang 1987 (classes 1 to 6), Martello and Vigo 1998 (7 to 10), Beasley 1985,
 * Christofides and Whitlock 1977, Bengtsson 1982, Alvarez-Valdes, Parajon and Tamarit 2002; proven lower bounds of the files.
 */
const size = z.object({ w: z.int(), h: z.int() })
const instanceSchema = z.object({
  name: z.string(),
  sheet: size.optional(),
  stock: z.array(size.extend({ cost: z.number() })).optional(),
  kerf: z.int().default(0),
  trim: z.int().default(0),
  parts: z.array(size.extend({ qty: z.int(), fixed: z.boolean().default(false) })),
  bounds: z.object({ R: z.object({ lb: z.int().optional() }) }),
})
const file = z.object({ instances: z.array(instanceSchema) })
const read = (name: string) => file.parse(JSON.parse(readFileSync(`shared/panels/${name}.json`, 'utf8'))).instances

/** Instances with one size of sheet; those with a choice of sheets ask another question. */
const cases = ['open', 'shop'].flatMap(read).flatMap((instance) => {
  const sheet = instance.sheet ?? (instance.stock?.length === 1 ? instance.stock[0] : undefined)
  const bound = instance.bounds.R.lb
  return sheet === undefined || bound === undefined ? [] : [{ ...instance, sheet, bound }]
})

function blocksAndBed({ parts, sheet, kerf, trim }: (typeof cases)[number]): { blocks: readonly Block[]; bed: Bed } {
  const pieces = parts.flatMap((part) => Array.from({ length: part.qty }, () => part))
  return {
    blocks: pieces.map((p, id) => ({ id, length: p.h + kerf, width: p.w + kerf, mayTurn: !p.fixed })),
    bed: { length: sheet.h - 2 * trim + kerf, width: sheet.w - 2 * trim + kerf },
  }
}

/** Searched as for a packet. */
const packed = cases.map((instance) => {
  const { blocks, bed } = blocksAndBed(instance)
  return { instance, blocks, bed, sheets: pack(blocks, bed, { effort: 'thorough', least: instance.bound }) }
})

describe(`${cases.length} open instances and shop jobs`, () => {
  it.each(packed)(
    '$instance.name: valid, and never fewer sheets than the proven bound',
    ({ instance, blocks, bed, sheets }) => {
      const { kerf, bound } = instance
      const usable = { x: 0, y: 0, length: bed.length - kerf, width: bed.width - kerf }
      for (const sheet of sheets) {
        const lying = sheet.map((s) => ({ ...s, length: s.length - kerf, width: s.width - kerf }))
        expect(faultsOf(lying, usable, kerf)).toEqual([])
      }
      expect(sheets.flat()).toHaveLength(blocks.length)
      expect(sheets.length).toBeGreaterThanOrEqual(bound)
      expect(fewestSheets({ blocks, bed })).toBeLessThanOrEqual(bound)
    },
  )

  it('all together at most 5 % over the bounds (the best published search is about 1.4 % over, Gardeyn and Wauters 2022)', () => {
    const total = packed.reduce((n, p) => n + p.sheets.length, 0)
    const bound = packed.reduce((n, p) => n + p.instance.bound, 0)
    console.log(`sheets ${total}, proven bound ${bound}: ${((100 * (total - bound)) / bound).toFixed(2)} % over`)
    expect(cases.length).toBeGreaterThan(60)
    expect(total).toBeLessThanOrEqual(bound * 1.05)
  })
})
