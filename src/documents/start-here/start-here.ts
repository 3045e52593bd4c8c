import type { Plan } from '../../plan/plan.ts'
import { showDay, showDayAndYear } from '../../units/day.ts'
import { type Block, type Fact, fact, factOf, heading, type Paper, warned } from '../block.ts'
import { acceptedWords } from '../confirms.ts'
import type { Assets, PacketDocument, Reader, Stamp } from '../document.ts'
import { type ForHelper, forHelper } from '../for-helper.ts'
import { markRanges } from '../mark-ranges.ts'
import { orderWords } from '../order-days.ts'
import { paperSize } from '../paper-size.ts'
import { newestBefore } from '../part-changes.ts'
import type { Waiting } from '../waiting.ts'
import { words } from '../words/template.ts'
import { writeOnePage } from '../write/pdf.ts'
import { ownFigureFacts } from './own-figure-facts.ts'

/** The one page everybody reads first; it names the other documents of the packet. */
export const startHere = (others: readonly PacketDocument[]): PacketDocument => ({
  id: 'start-here',
  reader: 'everyone',
  says: 'start here',
  needed: () => true,
  write: async (plan, assets, stamp) => {
    const given = { view: forHelper(plan), contents: contentsOf(plan, others), assets, stamp }
    return [{ path: 'start-here.pdf', bytes: await writeOnePage(startHerePapers(given), assets, stamp) }]
  },
})

/** What one reader's folder holds. */
export interface Contents {
  readonly folder: string
  readonly says: string
}

const FOLDERS: readonly (readonly [Reader, string, string])[] = [
  ['helper', 'helper/', ''],
  ['supplier', 'suppliers/', ''],
  ['office', 'office/', ': holds prices, keep it in the office'],
  ['client', 'client/', ''],
]

const contentsOf = (plan: Plan, others: readonly PacketDocument[]): readonly Contents[] =>
  FOLDERS.flatMap(([reader, folder, beside]) => {
    const held = others.filter((d) => d.reader === reader && d.needed(plan)).map((d) => d.says)
    return held.length === 0 ? [] : [{ folder, says: `${held.join(', ')}${beside}` }]
  })

/** How many of each list are tried for one page, most first (of notes one less); the rest is named by its number. */
const MOST = [8, 6, 5, 4, 3, 2, 1, 0] as const
/** Letters of marks, and of a sentence, before the rest is left to the other papers. */
const LETTERS = { marks: 90, sentence: 130 } as const
/** Heavy things named however short the lists become: they share a line. */
const TWO_PEOPLE_LEAST = 4
/** A blank to write the measurement in. */
const BLANK = '________'

interface StartHere {
  readonly view: ForHelper
  readonly contents: readonly Contents[]
  readonly assets: Assets
  readonly stamp: Stamp
}

/** The page with long lists, then with ever shorter ones: the first that stays one page is printed. */
export const startHerePapers = (given: StartHere): readonly Paper[] => MOST.map((most) => startHerePaper(given, most))

/** Measure first, what was confirmed, what is in it and for whom, what changed. */
function startHerePaper({ view, contents, assets, stamp }: StartHere, most: number): Paper {
  return {
    name: 'start here',
    job: view.title,
    size: paperSize(view.show.units),
    sections: [
      {
        turned: 'upright',
        title: view.title,
        under: `revision ${stamp.revision} · ${showDayAndYear(stamp.date)}`,
        blocks: [
          ...words('start-here.md', assets.templates, {
            job: view.title,
            revision: String(stamp.revision),
            finish: showDayAndYear(view.finish),
          }),
          heading('Measure first'),
          ...measureFirst(view.waiting, most),
          ...datesAndHands(view, most),
          ...confirmed(view, most),
          ...assumed(view, most),
          ...ownFigureFacts(view.ownFigures, most),
          heading('What is in it, and for whom'),
          ...contents.map((c) => fact(c.folder, c.says)),
          fact('hand out', 'only the folder of that reader, never this whole packet'),
          heading('What changed'),
          ...changed(view, stamp, most),
        ],
      },
    ],
  }
}

function measureFirst(waiting: readonly Waiting[], most: number): readonly Block[] {
  if (waiting.length === 0) return [fact('', 'Nothing waits for a measurement.')]
  return [...waiting.slice(0, most).map(waitingFact), ...theRest(waiting.slice(most))]
}

/** Every other measurement by name, one line a bay: the cut list says which parts wait for it. */
function theRest(waiting: readonly Waiting[]): readonly Fact[] {
  const placeOf = ({ question }: Waiting) => question.key.slice(0, question.key.indexOf('.'))
  return [...new Set(waiting.map(placeOf))].map((place) => {
    const here = waiting.filter((w) => placeOf(w) === place).map((w) => w.question.short)
    return warned('HOLD', `${capital([...new Set(here)].join('; '))}.`)
  })
}

function waitingFact({ question, marks, joints }: Waiting): Fact {
  const says = [
    ...(marks.length === 0 ? [] : [shortened(markRanges(marks))]),
    ...(joints === 0 ? [] : [`${joints} joints`]),
  ].join('; ')
  const waits = says === '' ? 'the check against its rules' : says
  return { ...warned('HOLD', `${capital(question.short)}.`, `Waits for it: ${waits}.`), right: BLANK }
}

const shortened = (text: string): string =>
  text.length <= LETTERS.marks ? text : `${text.slice(0, text.lastIndexOf(', ', LETTERS.marks))} and others`

/** What leaves when, and what one person does not carry alone; why is in the install sequence. */
function datesAndHands({ orders, twoPeople }: ForHelper, most: number): readonly Block[] {
  if (orders.length + twoPeople.size === 0) return []
  const heavy = [...twoPeople.keys()]
  const shown = heavy.slice(0, Math.max(TWO_PEOPLE_LEAST, most))
  const more = heavy.length > shown.length ? [`${heavy.length - shown.length} more, see the install sequence`] : []
  return [
    heading('Dates and hands'),
    ...factOf('order by', orders.map(orderWords)),
    ...factOf('two people', heavy.length === 0 ? [] : [[...shown, ...more].join('; ')]),
  ]
}

function assumed({ notes, assumed: values }: ForHelper, most: number): readonly Block[] {
  if (notes.length + values.length === 0) return []
  const lines = notes
    .slice(0, most)
    .map(({ code, short, places }) => fact(code, `${cutAt(short)} (${places.join(', ')})`))
  return [
    heading('Assumed or kept simple'),
    ...values.map(({ word, says }) => fact(word, most === MOST[0] ? says : cutAt(says))),
    ...lines,
    ...rest(notes.length - lines.length, 'more notes in the interview'),
  ]
}

function confirmed({ accepted }: ForHelper, most: number): readonly Block[] {
  if (accepted.length === 0) return []
  const lines = accepted.slice(0, most).map((a) => {
    const on = a.on === undefined ? 'not confirmed yet' : `confirmed ${showDay(a.on)}`
    return fact('kept', `${cutAt(acceptedWords(a))} (${on})`)
  })
  return [
    heading('Asked for against advice'),
    ...lines,
    ...rest(
      accepted.length - lines.length,
      lines.length === 0 ? 'things, with their days: see the install sequence' : 'more: see the install sequence',
    ),
  ]
}

function changed(view: ForHelper, stamp: Stamp, most: number): readonly Block[] {
  const changes = newestBefore(view.changes, stamp.revision)
  if (changes === undefined) return [fact('', 'First revision: nothing to compare with.')]
  if (changes.length === 0) return [fact('', 'No part is another size than in the revision before.')]
  const lines = changes.slice(0, most).map((says): Fact => ({ ...fact('', says), right: 'already sawn?', tick: true }))
  return [...lines, ...rest(changes.length - lines.length, 'more parts changed: go by the new cut list only')]
}

const rest = (count: number, says: string): readonly Fact[] => (count <= 0 ? [] : [fact('', `${count} ${says}.`)])

/** A long sentence goes on in the install sequence. */
const cutAt = (text: string): string =>
  text.length <= LETTERS.sentence ? text : `${text.slice(0, text.lastIndexOf(' ', LETTERS.sentence))} …`

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
