import FormulaParser from 'fast-formula-parser'
import { strFromU8, unzipSync } from 'fflate'
import { readSheet } from 'read-excel-file/node'
import { beforeAll, describe, expect, it } from 'vitest'
import type { PacketFile } from '../../src/documents/document.ts'
import { clientContact, clientName, privateNote, siteAddress, yourBusiness } from '../../src/job/chapters/job.ts'
import { frontQuote, frontsWay } from '../../src/job/chapters/make-or-buy.ts'
import { hourRate } from '../../src/job/chapters/price.ts'
import { type Job, withAnswer } from '../../src/job/job.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import { minorUnits, showMoney } from '../../src/units/money.ts'
import { allFiles, demoJob, heldPlan, metricPlan } from '../documents/fixture.ts'
import { pdfPages, pdfTags } from '../documents/pdf-text.ts'
import { rawSheets } from '../documents/xlsx-raw.ts'

const CANARIES = {
  name: 'Quillfeather Ozymandias',
  contact: 'zq-contact-4711@canary.invalid',
  note: 'Canary note xylophone',
  address: '9 Canary Mews',
}
const RATE = minorUnits(7391)
const LEAF = minorUnits(23_917)

/** The demo job with words and figures that occur nowhere else. */
function canaryJob(): Job {
  const put: readonly ((job: Job) => Job)[] = [
    (j) => withAnswer(j, clientName, 'job', CANARIES.name),
    (j) => withAnswer(j, clientContact, 'job', CANARIES.contact),
    (j) => withAnswer(j, privateNote, 'job', CANARIES.note),
    (j) => withAnswer(j, siteAddress, 'job', CANARIES.address),
    (j) => withAnswer(j, yourBusiness, 'job', '=HYPERLINK("x")'),
    (j) => withAnswer(j, hourRate, 'job', RATE),
    (j) => withAnswer(j, frontsWay, 'job', 'buy'),
    (j) => withAnswer(j, frontQuote, 'job', LEAF),
  ]
  return put.reduce((job, change) => change(job), demoJob('alcoves-inch'))
}

/** All that can be read in a file: text of a PDF, strings and values of a workbook with its properties. */
async function textOf({ path, bytes }: PacketFile): Promise<string> {
  if (path.endsWith('.pdf')) return (await pdfPages(bytes)).join('\n')
  const files = unzipSync(bytes)
  return Object.values(files)
    .map((content) => strFromU8(content))
    .join('\n')
}

let plan: Plan
let files: readonly PacketFile[]
const file = (path: string): PacketFile => {
  const found = files.find((f) => f.path === path)
  if (found === undefined) throw new Error(`${path} was not written: ${files.map((f) => f.path).join(', ')}`)
  return found
}

beforeAll(async () => {
  plan = makePlan(canaryJob(), 'quick')
  files = await allFiles(plan)
}, 60_000)

describe('the packet has the documents it promises', () => {
  it('under their names', () => {
    expect(files.map((f) => f.path)).toEqual([
      'start-here.pdf',
      'helper/cut-list.xlsx',
      'helper/install-sequence.pdf',
      'helper/touch-up-plan.pdf',
      'helper/drawings.pdf',
      'suppliers/fronts-request.pdf',
      'suppliers/fronts-request.xlsx',
      'office/purchase-list.xlsx',
      'office/costing.xlsx',
      'client/quote.pdf',
    ])
  })

  it('and start here is one page that names them', async () => {
    const pages = await pdfPages(file('start-here.pdf').bytes)
    expect(pages).toHaveLength(1)
    expect(pages[0]).toContain('touch-up plan')
    expect(pages[0]).toContain('page 1 of 1')
  })
})

describe('each reader sees their own share', () => {
  const outside = () => files.filter((f) => !/^(office|client)\//.test(f.path))

  it('no client name, contact or private note leaves the office and client folders', async () => {
    for (const each of outside()) {
      const text = await textOf(each)
      for (const secret of [CANARIES.name, CANARIES.contact, CANARIES.note]) {
        expect(text, `${each.path} holds ${secret}`).not.toContain(secret)
      }
    }
  })

  it('no price stands in helper or suppliers, whole or in its parts', async () => {
    const { price } = plan
    const lines = [...price.labour, ...price.materials, ...price.boughtIn]
    const amounts = [RATE, LEAF, price.total, price.beforeTax, price.cost, price.direct, ...lines.map((l) => l.amount)]
    const figures = amounts.filter((a) => a > 10_000).map(showMoney)
    for (const each of outside()) {
      const text = await textOf(each)
      for (const figure of figures) expect(text, `${each.path} holds ${figure}`).not.toContain(figure)
      expect(text).not.toMatch(/\bUSD\b/)
    }
  })

  it('the site’s address stands on the helper’s sequence, and goes to no shop', async () => {
    expect(await textOf(file('helper/install-sequence.pdf'))).toContain(CANARIES.address)
    for (const each of files.filter((f) => f.path.startsWith('suppliers/'))) {
      expect(await textOf(each)).not.toContain(CANARIES.address)
    }
  })

  it('the words looked for can be found where they belong', async () => {
    expect(await textOf(file('client/quote.pdf'))).toContain(CANARIES.name)
    expect(await textOf(file('client/quote.pdf'))).toContain(showMoney(plan.price.total))
    expect(await textOf(file('office/costing.xlsx'))).toContain(CANARIES.note)
    expect(await textOf(file('client/quote.pdf'))).not.toContain(CANARIES.note)
  })
})

describe('files are safe and the same each time', () => {
  it('no script, action or address in a PDF', () => {
    for (const each of files.filter((f) => f.path.endsWith('.pdf'))) {
      const raw = Buffer.from(each.bytes).toString('latin1')
      expect(raw).not.toMatch(/\/(JavaScript|JS|OpenAction|AA|URI|Launch|EmbeddedFile)\b/)
    }
  })

  it('every PDF is tagged and numbers its pages', async () => {
    for (const each of files.filter((f) => f.path.endsWith('.pdf'))) {
      const pages = await pdfPages(each.bytes)
      pages.forEach((text, i) => {
        expect(text, each.path).toContain(`page ${i + 1} of ${pages.length}`)
      })
      expect(await pdfTags(each.bytes, 1)).toContain('H1')
    }
    expect(await pdfTags(file('helper/drawings.pdf').bytes, 1)).toContain('Figure')
  })

  it('the same plan and stamp give the same bytes', async () => {
    const again = await allFiles(makePlan(canaryJob(), 'quick'))
    expect(again.map((f) => f.path)).toEqual(files.map((f) => f.path))
    again.forEach((f, i) => {
      expect(Buffer.from(f.bytes).equals(Buffer.from(files[i]?.bytes ?? [])), f.path).toBe(true)
    })
  }, 60_000)

  it('what a person typed with a leading = stays text in a workbook', () => {
    for (const each of files.filter((f) => f.path.endsWith('.xlsx'))) {
      for (const cells of rawSheets(each.bytes).values()) {
        for (const cell of cells.values()) expect(cell.formula ?? '').not.toContain('HYPERLINK')
      }
    }
  })
})

describe('every formula gives the figure that stands beside it', () => {
  it.each(['office/purchase-list.xlsx', 'office/costing.xlsx'])('%s', (path) => {
    const sheets = rawSheets(file(path).bytes)
    const parser = new FormulaParser({
      functions: { ROUNDUP: roundUp },
      onCell: ({ sheet, row, col }) => valueAt(sheets, sheet, row, col),
      onRange: ({ sheet, from, to }) =>
        Array.from({ length: to.row - from.row + 1 }, (_, r) =>
          Array.from({ length: to.col - from.col + 1 }, (_, c) => valueAt(sheets, sheet, from.row + r, from.col + c)),
        ),
    })
    let formulas = 0
    for (const [sheet, cells] of sheets) {
      for (const cell of cells.values()) {
        if (cell.formula === undefined) continue
        formulas += 1
        const result = parser.parse(cell.formula, { sheet, row: rowOf(cell.at), col: columnOf(cell.at) })
        expect(result, `${sheet} ${cell.at} ${cell.formula}`).toBeCloseTo(Number(cell.value), 6)
      }
    }
    expect(formulas).toBeGreaterThan(20)
  })

  it('the costing ends in the plan’s total, and the total is live', () => {
    const cells = [...(rawSheets(file('office/costing.xlsx').bytes).get('Price')?.values() ?? [])]
    const total = cells.find((cell) => cell.value === 'total')
    const amount = cells.find((cell) => cell.at === total?.at.replace('A', 'C'))
    expect(amount?.formula).toBeDefined()
    expect(Number(amount?.value)).toBeCloseTo(plan.price.total / 100, 6)
    const plain = cells.filter((c) => /^C\d/.test(c.at) && c.formula === undefined && c.at !== 'C1')
    expect(plain, 'only travel and discount are typed in').toHaveLength(2)
  })
})

describe('the office’s workbooks', () => {
  it.each(['office/purchase-list.xlsx', 'office/costing.xlsx'])(
    '%s: head in sight, printed to the page’s width, currency named once a sheet',
    (path) => {
      const parts = unzipSync(file(path).bytes)
      const sheets = Object.keys(parts).filter((name) => name.startsWith('xl/worksheets/sheet'))
      for (const name of sheets) {
        const xml = strFromU8(parts[name] ?? new Uint8Array())
        expect(xml, name).toMatch(/ySplit="1"[^>]*state="frozen"/)
        expect(xml, name).toMatch(/fitToHeight="0"/)
      }
      for (const cells of rawSheets(file(path).bytes).values()) {
        const named = [...cells.values()].filter((cell) => /, USD$/.test(cell.value ?? ''))
        expect(named.length).toBeLessThanOrEqual(1)
      }
    },
  )

  it('mark every price that is made up', () => {
    const invented = plan.purchases.filter((p) => p.priceKnown === 'invented').length
    const cells = [...(rawSheets(file('office/purchase-list.xlsx').bytes).get('Purchases')?.values() ?? [])]
    expect(invented).toBeGreaterThan(5)
    expect(cells.filter((cell) => cell.value === 'invented: ask')).toHaveLength(invented)
  })
})

describe('the quote', () => {
  it('is two pages: each bay in words, what is left out, the tax and its own line, what was agreed', async () => {
    const pages = await pdfPages(file('client/quote.pdf').bytes)
    const text = pages.join(' ')
    expect(pages.length).toBeLessThanOrEqual(2)
    for (const bay of plan.bays) expect(text.toLowerCase()).toContain(`${bay.name}: `)
    expect(text).toContain('What it leaves out')
    expect(text).toContain(`Tax ${plan.price.rates.tax} %`)
    expect(text).toContain(showMoney(plan.price.tax))
    expect(text).toContain('stands against the side of the breast')
  })

  it('does not trouble the client with how sheets are carried', async () => {
    expect(plan.messages.some((m) => m.weight === 'confirm' && m.about.endsWith('secondPair'))).toBe(true)
    expect((await pdfPages(file('client/quote.pdf').bytes)).join(' ')).not.toMatch(/people lift/)
  })
})

describe('the cut list', () => {
  it('holds every part made here once, none that is bought, and is read by another program', async () => {
    const sheets = [...rawSheets(file('helper/cut-list.xlsx').bytes).keys()].filter((name) => name !== 'Key')
    const rows = await Promise.all(
      sheets.map((name) => readSheet(Buffer.from(file('helper/cut-list.xlsx').bytes), name)),
    )
    const marks = rows.flatMap((sheet) =>
      sheet.slice(1).flatMap((row) => Array.from({ length: Number(row[3]) }, () => String(row[0]))),
    )
    const made = plan.parts
      .filter((p) => p.supply === 'made')
      .flatMap((p) => Array.from({ length: p.quantity }, () => p.mark))
    expect([...marks].sort()).toEqual([...made].sort())
    for (const name of sheets) expect(name).toMatch(/^[A-Za-z0-9 .]{1,31}$/)
  })

  it('prints HOLD instead of a size where a measurement is missing, and says which', async () => {
    const held = heldPlan()
    const waiting = held.parts.filter((p) => p.waitsFor.length > 0 && p.supply === 'made')
    expect(waiting.length).toBeGreaterThan(0)
    const written = (await allFiles(held)).find((f) => f.path === 'helper/cut-list.xlsx')
    const text = await textOf(written ?? { path: '.xlsx', bytes: new Uint8Array() })
    expect(text).toContain('HOLD')
    expect(text).toContain('right alcove, studs')
  }, 30_000)

  it('is in millimetres as numbers in a metric job', async () => {
    const metric = metricPlan()
    const written = (await allFiles(metric)).find((f) => f.path === 'helper/cut-list.xlsx')
    const part = metric.parts.find((p) => p.supply === 'made' && p.waitsFor.length === 0)
    const cells = [...rawSheets(written?.bytes ?? new Uint8Array()).values()].flatMap((sheet) => [...sheet.values()])
    const mark = cells.find((cell) => cell.value === part?.mark)
    expect(mark).toBeDefined()
    expect(cells.some((cell) => Number(cell.value) === (part?.length ?? 0) / 1e6)).toBe(true)
  }, 30_000)
})

describe('the touch-up plan', () => {
  it('has each bay’s picture and rows on one page', async () => {
    const pages = await pdfPages(file('helper/touch-up-plan.pdf').bytes)
    expect(pages).toHaveLength(1 + plan.bays.length)
  })

  it('has a row for every joint', async () => {
    const text = (await pdfPages(file('helper/touch-up-plan.pdf').bytes)).join(' ')
    for (const joint of plan.joints.joints) expect(text).toContain(joint.where.split(' ')[0])
    expect(plan.joints.joints.length).toBeGreaterThan(10)
  })
})

/** Away from zero; whole numbers stay (ECMA-376 part 1, 18.17.7, ROUNDUP, from memory). The parser’s own turns 3 into 4. */
const roundUp = (number: { readonly value: number }, digits: { readonly value: number }): number => {
  const factor = 10 ** digits.value
  return (Math.sign(number.value) * Math.ceil(Math.abs(number.value) * factor)) / factor
}

type Sheets = ReturnType<typeof rawSheets>

function valueAt(sheets: Sheets, sheet: string, row: number, col: number): number | string | null {
  const value = sheets.get(sheet)?.get(`${String.fromCharCode(64 + col)}${row}`)?.value
  if (value === undefined) return null
  return value.trim() !== '' && Number.isFinite(Number(value)) ? Number(value) : value
}
const rowOf = (at: string): number => Number(at.replace(/\D/g, ''))
const columnOf = (at: string): number => at.charCodeAt(0) - 64
