import { type ForHelper, forHelper } from '../audience.ts'
import { type Block, fact, factOf, heading, type Paper, type Section, warned } from '../block.ts'
import type { Assets, PacketDocument } from '../document.ts'
import { markRanges } from '../mark-ranges.ts'
import { paperSize, unitWord } from '../paper-size.ts'
import { words } from '../words/template.ts'
import { writePdf } from '../write/pdf.ts'
import { daysOfWork, type WorkDay } from './days-of-work.ts'
import { stepBlocks } from './step-blocks.ts'

/** What is done on which day, in an order that works. */
export const installSequence: PacketDocument = {
  id: 'install-sequence',
  reader: 'helper',
  says: 'install sequence',
  needed: (plan) => plan.calendar.tasks.some((task) => task.place === 'site' || task.place === 'shop'),
  write: async (plan, assets, stamp) => {
    const paper = installPaper(forHelper(plan), assets)
    return [{ path: 'helper/install-sequence.pdf', bytes: await writePdf(paper, assets, stamp) }]
  },
}

/** The place and its dangers first, then the workshop, then a page for each day on site. */
export function installPaper(view: ForHelper, assets: Assets): Paper {
  const days = daysOfWork(view.tasks)
  const shop = days.filter((d) => d.place === 'shop')
  const site = days.filter((d) => d.place === 'site')
  return {
    name: 'install sequence',
    job: view.title,
    size: paperSize(view.show.units),
    sections: [
      firstPage(view, assets, site.length),
      ...(shop.length === 0 ? [] : [shopSection(shop)]),
      ...site.map((day): Section => ({ ...dayHead(day), turned: 'upright', blocks: day.tasks.flatMap(stepBlocks) })),
    ],
  }
}

function firstPage(view: ForHelper, assets: Assets, siteDays: number): Section {
  const heavy = [...view.twoPeople]
  return {
    turned: 'upright',
    title: 'Install sequence',
    under: `${view.title} · all sizes in ${unitWord(view.show.units)}`,
    blocks: [
      ...factOf('site', view.siteAddress === undefined ? [] : [view.siteAddress]),
      ...words('install-intro.md', assets.templates, {
        job: view.title,
        days: String(siteDays),
        note: view.siteNote ?? false,
        lift: heavy.length === 0 ? false : markRanges(heavy.map(([mark]) => mark)),
      }),
      ...cautions(view, assets),
      ...heavyThings(heavy),
      ...view.accepted.map((a) => warned('asked', `${a.short} (${a.place}).`)),
      ...view.waiting.map((w) => warned('HOLD', `Measure first: ${w.question.short}. ${markRanges(w.marks)}`)),
    ],
  }
}

function cautions({ dangers }: ForHelper, assets: Assets): readonly Block[] {
  const on = (there: boolean) => (there ? 'yes' : false)
  return words('cautions.md', assets.templates, {
    spraying: on(dangers.spraying),
    leadPaint: on(dangers.leadPaint),
    electricity: on(dangers.electricity),
    fire: on(dangers.fire),
    heavy: on(dangers.heavy),
    shelves: on(dangers.shelves),
  })
}

/** Each thing two people carry, and why. */
const heavyThings = (heavy: readonly (readonly [mark: string, why: string])[]): readonly Block[] =>
  heavy.length === 0 ? [] : [heading('Two people'), ...heavy.map(([mark, why]) => fact(mark, why))]

const shopSection = (days: readonly WorkDay[]): Section => ({
  turned: 'upright',
  title: 'In the workshop',
  under: days.map((d) => d.says).join(' · '),
  blocks: days.flatMap((day) => [heading(day.says), ...day.tasks.flatMap(stepBlocks)]),
})

const dayHead = (day: WorkDay): Pick<Section, 'title' | 'under'> => ({ title: day.says, under: day.under })
