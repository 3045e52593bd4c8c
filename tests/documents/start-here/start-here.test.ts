import { describe, expect, it } from 'vitest'
import { forHelper } from '../../../src/documents/for-helper.ts'
import { orderWords } from '../../../src/documents/order-days.ts'
import { newestBefore } from '../../../src/documents/part-changes.ts'
import { SHOP_ORDER, SHOPS } from '../../../src/documents/shop-words.ts'
import { startHerePapers } from '../../../src/documents/start-here/start-here.ts'
import { writeOnePage } from '../../../src/documents/write/pdf.ts'
import { issuedParts } from '../../../src/plan/compare/compare.ts'
import { ASSETS, STAMP } from '../assets.ts'
import { heldPlan } from '../fixture.ts'
import { pdfPages } from '../pdf-text.ts'

const plan = heldPlan()
const view = forHelper(plan)
const sizes = issuedParts(plan)
const first = Object.keys(sizes)[0] ?? ''
const issue = (revision: number, parts: Readonly<Record<string, string>>) => ({
  revision,
  on: '2026-11-12',
  tool: 'nichework 0.1.0',
  parts,
})
const changesAt = (revision: number, issued: readonly ReturnType<typeof issue>[]) =>
  newestBefore(forHelper({ ...plan, job: { ...plan.job, issued } }).changes, revision)

describe('what changed since the packet before', () => {
  it('says nothing of a first revision, and that nothing changed when nothing did', () => {
    expect(changesAt(1, [])).toBeUndefined()
    expect(changesAt(2, [issue(1, sizes)])).toEqual([])
  })

  it('names a part with its old size, and one no longer needed', () => {
    const changes = changesAt(2, [issue(1, { ...sizes, [first]: '1 × 1 × 1', 'L9-S9': '2 × 2 × 2' })]) ?? []
    expect(changes).toHaveLength(2)
    expect(changes.find((says) => says.startsWith(first))).toContain('1 × 1 × 1')
    expect(changes.some((says) => says.startsWith('L9-S9'))).toBe(true)
  })

  it('compares with the newest packet before this one', () => {
    expect(changesAt(3, [issue(2, sizes), issue(1, { x: 'y' }), issue(3, { z: 'w' })])).toEqual([])
  })
})

describe('start here', () => {
  it('stays one page with a long title, many changes, and letters the font does not hold', async () => {
    const parts = Array.from(
      { length: 80 },
      (_, i) => `L${i}-S1 side was 17 15/16 × 12 3/16, now 18 × 12 1/4: cut again`,
    )
    const crowded = {
      ...view,
      title: '書斎 the long room under the eaves with two alcoves and a f',
      changes: [{ revision: 1, parts }],
      waiting: Array.from({ length: 12 }, () => view.waiting).flat(),
      accepted: Array.from({ length: 9 }, () => ({ short: 'word '.repeat(30), place: 'breast', on: undefined })),
    }
    const stamp = { ...STAMP, revision: 2 }
    const contents = ['helper/', 'suppliers/', 'office/', 'client/'].map((folder) => ({
      folder,
      says: 'lists '.repeat(12),
    }))
    const bytes = await writeOnePage(startHerePapers({ view: crowded, contents, assets: ASSETS, stamp }), ASSETS, stamp)
    const pages = await pdfPages(bytes)
    expect(pages).toHaveLength(1)
    expect(pages[0]).toContain('□□ the long room')
    expect(pages[0]).toContain('HOLD')
    expect(pages[0]).toMatch(/\d+ more parts changed/)
  })
})

describe('start here of a wall with a measurement missing', () => {
  it('has a blank to write in, the days orders leave, what two carry, and what was assumed', async () => {
    const contents = [{ folder: 'helper/', says: 'cut list' }]
    const given = { view, contents, assets: ASSETS, stamp: STAMP }
    const [text = ''] = await pdfPages(await writeOnePage(startHerePapers(given), ASSETS, STAMP))
    expect(view.waiting.length).toBeGreaterThan(0)
    expect(text).toMatch(/HOLD.*____/)
    expect(view.orders.length).toBeGreaterThan(1)
    for (const order of view.orders) expect(text).toContain(orderWords(order))
    expect(view.twoPeople.size).toBeGreaterThan(0)
    for (const mark of view.twoPeople.keys()) expect(text).toContain(mark)
    expect(view.notes.length).toBeGreaterThan(0)
    for (const { code, places } of view.notes.slice(0, 1)) {
      expect(text).toContain(code)
      expect(text).toContain(places.join(', '))
    }
  })

  it('lists a shop to order from only when something comes from it', () => {
    const used = new Set<string>([...plan.purchases.map((p) => p.shop), ...plan.supply.requests.map((r) => r.id)])
    const named = view.orders.flatMap((order) => order.shops)
    expect(new Set(named).size).toBe(named.length)
    for (const { shop } of plan.calendar.orderBy) {
      const word = SHOP_ORDER.find((s) => s === shop)
      expect(word !== undefined && named.includes(SHOPS[word])).toBe(used.has(shop))
    }
  })
})
