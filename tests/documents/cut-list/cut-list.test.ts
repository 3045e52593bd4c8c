import { describe, expect, it } from 'vitest'
import type { BookCell } from '../../../src/documents/book.ts'
import { cutListBook } from '../../../src/documents/cut-list/cut-list.ts'
import { forHelper } from '../../../src/documents/for-helper.ts'
import { inchPlan, metricPlan } from '../fixture.ts'

const said = (cell: BookCell | undefined): string => {
  if (cell === null || cell === undefined) return ''
  if (typeof cell === 'string') return cell
  return 'bold' in cell && typeof cell.bold === 'string' ? cell.bold : 'value' in cell ? String(cell.value) : ''
}
const sheetsOf = (plan: ReturnType<typeof inchPlan>) =>
  cutListBook(forHelper(plan)).sheets.filter((sheet) => sheet.name !== 'Key')
const columnOf = (sheet: ReturnType<typeof sheetsOf>[number], head: string): readonly string[] => {
  const at = sheet.columns.findIndex((column) => column.head === head)
  return sheet.rows.map((row) => said(row[at]))
}

describe.each([
  ['inches', inchPlan()],
  ['millimetres', metricPlan()],
])('the cut list in %s', (_units, plan) => {
  it('says in words what each piece is', () => {
    for (const sheet of sheetsOf(plan)) for (const piece of columnOf(sheet, 'piece')) expect(piece).not.toBe('')
  })

  it('has no two rows alike: like pieces are one row with their number', () => {
    for (const sheet of sheetsOf(plan)) {
      const rows = sheet.rows.map((row) => row.map(said).join('|'))
      expect(new Set(rows).size).toBe(rows.length)
    }
  })

  it('goes through each family of material from thin to thick', () => {
    const sheets = sheetsOf(plan)
    const thick = sheets.map((sheet) => {
      const mark = columnOf(sheet, 'mark')[0]
      const material = plan.parts.find(
        (p) => p.mark === mark && forHelper(plan).materials.get(p.material) === sheet.name,
      )
      return { family: sheet.name.replace(/\d.*$/, ''), thickness: material?.thickness ?? 0 }
    })
    for (const [i, each] of thick.entries()) {
      const before = thick[i - 1]
      if (before?.family === each.family) expect(each.thickness).toBeGreaterThanOrEqual(before.thickness)
    }
    expect(new Set(thick.map((t) => t.family)).size).toBeGreaterThan(1)
  })
})

describe('drilling', () => {
  it('is on the cut list only where the doors are made here', () => {
    const joinery = (plan: ReturnType<typeof inchPlan>) =>
      sheetsOf(plan)
        .flatMap((sheet) => columnOf(sheet, 'joinery'))
        .join(' ')
    expect(inchPlan().supply.requests.map((r) => r.id)).toContain('fronts')
    expect(joinery(inchPlan())).not.toMatch(/hinge cup|handle hole/i)
    expect(metricPlan().supply.requests.map((r) => r.id)).not.toContain('fronts')
    expect(joinery(metricPlan())).toMatch(/Hinge cups 35 mm wide/)
    expect(joinery(metricPlan())).toMatch(/Handle hole \d+/)
  })
})
