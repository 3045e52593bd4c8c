import { describe, expect, it } from 'vitest'
import { forShops } from '../../../src/documents/for-shop.ts'
import { requestPaper } from '../../../src/documents/requests/requests.ts'
import { writePdf } from '../../../src/documents/write/pdf.ts'
import type { Plan } from '../../../src/plan/plan.ts'
import { showDayAndYear } from '../../../src/units/day.ts'
import { ASSETS, STAMP } from '../assets.ts'
import { inchPlan, metricPlan } from '../fixture.ts'
import { pdfPages } from '../pdf-text.ts'

async function textsOf(plan: Plan) {
  const views = forShops(plan)
  expect(views.length).toBeGreaterThan(0)
  return Promise.all(
    views.map(async (view) => ({
      view,
      text: (await pdfPages(await writePdf(requestPaper(view, ASSETS), ASSETS, STAMP))).join(' '),
    })),
  )
}

describe('a request to an outside shop', () => {
  it.each([
    ['doors, inches', inchPlan],
    ['boxes, millimetres', metricPlan],
  ])('says when it is needed and when the order leaves: %s', async (_what, make) => {
    const plan = make()
    for (const { view, text } of await textsOf(plan)) {
      const order = plan.calendar.orderBy.find((o) => o.shop === view.request.id)
      const user = plan.calendar.tasks.find((task) => task.id === order?.forTask)
      if (order === undefined || user === undefined) throw new Error(`nothing waits for ${view.request.id}`)
      expect(order.by < user.start).toBe(true)
      expect(text).toContain(showDayAndYear(order.by))
      expect(text).toContain(showDayAndYear(user.start))
    }
  })

  it('keeps each size on one line, and says what is alike once', async () => {
    const [doors] = await textsOf(inchPlan())
    for (const line of doors?.view.request.lines ?? []) expect(doors?.text).toContain(line.size)
    const style = doors?.view.request.lines[0]?.details.find((d) => d.startsWith('style')) ?? 'no style'
    expect(doors?.text.split(style)).toHaveLength(2)
  })

  it('leaves no detail of any line out', async () => {
    for (const { view, text } of [...(await textsOf(inchPlan())), ...(await textsOf(metricPlan()))]) {
      for (const detail of view.request.lines.flatMap((line) => line.details)) expect(text).toContain(detail)
    }
  })
})
