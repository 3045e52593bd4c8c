import { addDays, showDay, showDayAndYear } from '../../units/day.ts'
import { showMoney } from '../../units/money.ts'
import { type Block, fact, factOf, type Paper, SPACE, together, warned } from '../block.ts'
import { acceptedWords, GOVERNS } from '../confirms.ts'
import type { Assets, PacketDocument, Stamp } from '../document.ts'
import { type ForClient, forClient } from '../for-client.ts'
import { paperSize } from '../paper-size.ts'
import { words } from '../words/template.ts'
import type { TemplateValues } from '../words/template-list.ts'
import { writePdf } from '../write/pdf.ts'

/** What the client signs. */
export const quote: PacketDocument = {
  id: 'quote',
  reader: 'client',
  says: 'quote',
  needed: () => true,
  write: async (plan, assets, stamp) => [
    { path: 'client/quote.pdf', bytes: await writePdf(quotePaper(forClient(plan), assets, stamp), assets, stamp) },
  ],
}

/** The quote: what you get, what it leaves out, the price alone with white space round it, dates, and a place to sign. */
export function quotePaper(view: ForClient, assets: Assets, stamp: Stamp): Paper {
  const holds = showDayAndYear(addDays(stamp.date, view.validDays))
  const number = view.quoteNumber === undefined ? 'Quote' : `Quote ${view.quoteNumber}`
  return {
    name: 'quote',
    job: view.title,
    size: paperSize(view.show.units),
    sections: [
      {
        turned: 'upright',
        title: view.title,
        under: `${number} · ${showDayAndYear(stamp.date)} · holds until ${holds}`,
        blocks: [
          ...factOf('from', lineOf(view.business)),
          ...factOf('for', lineOf(view.client)),
          ...factOf('site', lineOf(view.siteAddress)),
          ...scopeBlocks(view),
          ...words('quote.md', assets.templates, quoteValues(view, holds)),
          SPACE,
          together(...priceBlocks(view)),
          together(...datesBlocks(view)),
          ...askedBlocks(view),
          ...words('care.md', assets.templates, careValues(view)),
          SPACE,
          together(
            fact('yes', 'name  ______________________   date  ______________'),
            SPACE,
            fact('', 'signature  ______________________________________'),
          ),
        ],
      },
    ],
  }
}

const lineOf = (text: string | undefined): readonly string[] => (text === undefined ? [] : [text])

const scopeBlocks = (view: ForClient): readonly Block[] => [
  SPACE,
  ...view.scope.map((line, i) => fact(i === 0 ? 'you get' : '', `${line.place}: ${line.says}`)),
]

const quoteValues = (view: ForClient, valid: string): TemplateValues<'quote.md'> => ({
  client: view.client ?? false,
  site: view.siteAddress ?? false,
  valid,
  bought: view.bought.length === 0 ? false : view.bought.join(', '),
  wallColour: view.wallColour === '' ? false : view.wallColour,
  currency: view.show.currency,
})

const careValues = ({ dangers }: ForClient): TemplateValues<'care.md'> => ({
  paint: 'yes',
  masonry: dangers.masonryPaint ? 'yes' : false,
  shelves: dangers.shelves ? 'yes' : false,
})

function priceBlocks({ price, show }: ForClient): readonly Block[] {
  return [
    { ...fact('price', `The work, in ${show.currency}`), right: showMoney(price.beforeTax) },
    { ...fact('', `Tax ${price.taxPercent} %`), right: showMoney(price.tax) },
    { ...fact('', 'Total'), weight: 'total', right: showMoney(price.total) },
    SPACE,
    ...price.stages.map(
      (stage, i): Block => ({
        ...fact(i === 0 ? 'you pay' : '', `${stage.percent} %  ${stage.says}`),
        right: showMoney(stage.amount),
      }),
    ),
  ]
}

function datesBlocks(view: ForClient): readonly Block[] {
  const dates = [
    ...(view.measured === undefined ? [] : [`We measure ${showDay(view.measured)}.`]),
    ...(view.workshopFrom === undefined ? [] : [`Workshop from ${showDay(view.workshopFrom)}.`]),
    ...(view.siteFrom === undefined ? [] : [`In your house from ${showDay(view.siteFrom)}.`]),
    `Handed over ${showDayAndYear(view.finish)}, when the quote is accepted in time and nothing is found behind the old work.`,
  ]
  return [SPACE, fact('dates', dates.join(' '))]
}

/** What was asked for against advice stands in the quote, with its bar. */
const askedBlocks = (view: ForClient): readonly Block[] => [
  ...view.accepted.map((a) =>
    warned('asked', [acceptedWords(a), ...(a.on === undefined ? [] : [`Agreed ${showDayAndYear(a.on)}.`])].join(' ')),
  ),
  ...(view.accepted.length === 0 ? [] : [fact('', GOVERNS)]),
]
