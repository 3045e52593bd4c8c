import { type Block, chapter, factOf, type Paper, warned } from '../block.ts'
import { acceptedWords, confirmedOn, GOVERNS } from '../confirms.ts'
import type { Assets, PacketDocument } from '../document.ts'
import { type ForHelper, forHelper } from '../for-helper.ts'
import { markRanges } from '../mark-ranges.ts'
import { paperSize, unitWord } from '../paper-size.ts'
import { words } from '../words/template.ts'
import { writePdf } from '../write/pdf.ts'
import { daysOfWork } from './days-of-work.ts'
import { dayBlocks } from './step-blocks.ts'

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

/** The place and its dangers, then the days in the workshop and on site as they come. */
export function installPaper(view: ForHelper, assets: Assets): Paper {
  const days = daysOfWork(view.tasks)
  const siteDays = days.filter((day) => day.place === 'site').length
  return {
    name: 'install sequence',
    job: view.title,
    size: paperSize(view.show.units),
    sections: [
      {
        turned: 'upright',
        title: 'Install sequence',
        under: `${view.title} · all sizes in ${unitWord(view.show.units)}`,
        blocks: [...firstBlocks(view, assets, siteDays), ...days.map((day) => chapter(day.says, ...dayBlocks(day)))],
      },
    ],
  }
}

function firstBlocks(view: ForHelper, assets: Assets, siteDays: number): readonly Block[] {
  return [
    ...factOf('site', view.siteAddress === undefined ? [] : [view.siteAddress]),
    ...words('install-intro.md', assets.templates, {
      job: view.title,
      days: String(siteDays),
      note: view.siteNote ?? false,
    }),
    ...cautions(view, assets),
    ...heavyThings([...view.twoPeople]),
    ...view.accepted.map((a) => warned('asked', [acceptedWords(a), confirmedOn(a)].join(' '))),
    ...factOf('governs', view.accepted.length === 0 ? [] : [GOVERNS]),
    ...view.waiting.map((w) => warned('HOLD', `Measure first: ${w.question.short}. ${markRanges(w.marks)}`)),
  ]
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
  factOf(
    'two people',
    heavy.map(([mark, why]) => `${mark}: ${why}`),
  )
