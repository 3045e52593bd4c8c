import type { Difference } from '../plan/compare/difference.ts'
import type { ComparedPart, ComparedPurchase, Itemized } from '../plan/compare/itemized.ts'
import type { Plan } from '../plan/plan.ts'
import { cellsOf, padCells, wrapCells } from '../screens/cells.ts'
import type { Message } from '../things/message.ts'
import { showDayAndYear } from '../units/day.ts'
import { showHours } from '../units/hours.ts'
import { type Money, minorUnits, showMoney } from '../units/money.ts'

const WIDTH = 79
const NAME = 34

interface Pair {
  readonly before: Plan
  readonly after: Plan
}

/** What differs between two plans as the command line prints it: in short, then part by part, line by line. */
export function compareText(found: Itemized, { before, after }: Pair): string {
  const currencies = [...new Set([before.show.currency, after.show.currency])]
  const sections = [
    section('In short', found.inShort.flatMap(bullet)),
    section(
      'Parts, finished size',
      rowsOf(found.parts, ({ size }) => size, makerWords),
    ),
    section(
      `Cost, ${currencies.join(' → ')}`,
      rowsOf(found.cost, showMoney, currencies.length === 1 ? moreOrLess : undefined),
    ),
    section('Hours', rowsOf(found.hours, showHours)),
    section('Dates', rowsOf(found.dates, showDayAndYear)),
    section('To buy', rowsOf(found.purchases, purchaseWords)),
    section('Messages', [
      ...found.messages.came.flatMap((m) => hung('+ ', messageWords(m))),
      ...found.messages.went.flatMap((m) => hung('- ', messageWords(m))),
    ]),
  ].filter((lines) => lines.length > 0)
  return sections.length === 0 ? 'Nothing differs.' : sections.map((lines) => lines.join('\n')).join('\n\n')
}

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [title, ...lines.map((line) => `  ${line}`)]

const bullet = (says: string): readonly string[] => hung('', says)

const hung = (head: string, words: string): readonly string[] =>
  wrapCells(words, WIDTH - 2 - cellsOf(head)).map((line, i) => padCells(i === 0 ? head : '', cellsOf(head)) + line)

/** `was → now`, `new: now`, `gone: was`, behind the thing's name; `more` adds by how much. */
const rowsOf = <T>(
  differences: readonly Difference<T>[],
  words: (value: T) => string,
  more: (was: T, now: T) => string = () => '',
): readonly string[] =>
  differences.flatMap(({ says, was, now }) => {
    const change = changeWords(
      was === undefined ? undefined : words(was),
      now === undefined ? undefined : words(now),
      was === undefined || now === undefined ? '' : more(was, now),
    )
    const names = wrapCells(says, NAME)
    return Array.from({ length: Math.max(names.length, change.length) }, (_, i) =>
      `${padCells(names[i] ?? '', NAME + 2)}${change[i] ?? ''}`.trimEnd(),
    )
  })

/** On one line where there is room; else what is now stands under what was, so that no size is broken. */
function changeWords(was: string | undefined, now: string | undefined, more: string): readonly string[] {
  const room = WIDTH - NAME - 2 - 2
  if (was === undefined) return wrapCells(`new: ${now ?? ''}`, room)
  if (now === undefined) return wrapCells(`gone: ${was}`, room)
  const whole = `${was} → ${now}${more === '' ? '' : `  ${more}`}`
  return cellsOf(whole) <= room ? [whole] : [was, `→ ${now}`].flatMap((line) => wrapCells(line, room))
}

const MAKERS = { made: 'made', boxes: 'bought with the boxes', fronts: 'bought with the doors' } as const
const makerWords = (was: ComparedPart, now: ComparedPart): string =>
  was.supply === now.supply ? '' : `${MAKERS[was.supply]} → ${MAKERS[now.supply]}`

const moreOrLess = (was: Money, now: Money): string =>
  `${now > was ? '+' : '−'}${showMoney(minorUnits(Math.abs(now - was)))}`

const purchaseWords = ({ packs, unit, packSize, priceEach }: ComparedPurchase): string =>
  `${packs} ${packSize === 1 ? unit : `× ${packSize} ${unit}`} at ${showMoney(priceEach)}`

const messageWords = ({ weight, place, short }: Message): string => `${weight} · ${place} · ${short}`
