import { formula, within } from '../../things/formula.ts'
import type { Purchase } from '../../things/supplies.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'
import { filledHoles } from '../fixings/filled-holes.ts'
import { type FixingLine, lineCount } from '../fixings/fixing-line.ts'
import { priceKnown } from '../price-known.ts'
import { packPrice, packsFor } from './packs.ts'

/** How one kind of hardware is sold. */
interface Sold {
  readonly test: RegExp
  /** Figure rows: price of one unit, and how much is in a pack (1 when absent). */
  readonly price: string
  readonly pack?: string
  /** The price is of a pack, not of one unit. */
  readonly soldWhole?: true
  readonly spare: boolean
  readonly firstUsedBy: string
}

/** The first that fits the line's id counts. */
const SOLD: readonly Sold[] = [
  { test: /shelf-pin/, price: 'price.shelf-pin', pack: 'pack.small', spare: false, firstUsedBy: 'D6' },
  { test: /^hinge/, price: 'price.hinge-soft', spare: false, firstUsedBy: 'D5' },
  { test: /^slide/, price: 'price.slide-side', spare: false, firstUsedBy: 'D6' },
  { test: /push/, price: 'price.push-latch', spare: false, firstUsedBy: 'D5' },
  { test: /handle|knob|pull/, price: 'price.handle', spare: false, firstUsedBy: 'D5' },
  { test: /bumper/, price: 'price.bumper', pack: 'pack.small', spare: false, firstUsedBy: 'D6' },
  { test: /^bracket/, price: 'price.bracket', spare: false, firstUsedBy: 'F6' },
  { test: /leveller/, price: 'price.leveller', spare: false, firstUsedBy: 'F2' },
  { test: /packer/, price: 'price.packer', pack: 'pack.small', spare: false, firstUsedBy: 'F2' },
  { test: /anchor/, price: 'price.anchor', pack: 'pack.anchors', spare: true, firstUsedBy: 'F4' },
  { test: /bolt/, price: 'price.bolt', pack: 'pack.small', spare: true, firstUsedBy: 'F4' },
  { test: /screw/, price: 'price.screw', pack: 'pack.screws', spare: true, firstUsedBy: 'W3' },
  { test: /(^|[.-])pins?([.-]|$)|brad|nail/, price: 'price.pin', pack: 'pack.pins', spare: true, firstUsedBy: 'W3' },
  { test: /pva|wood-glue/, price: 'price.pva', pack: 'pack.pva', spare: false, firstUsedBy: 'W3' },
  { test: /instant/, price: 'price.instant', spare: false, firstUsedBy: 'F9' },
  { test: /adhesive/, price: 'price.adhesive', pack: 'pack.caulk', soldWhole: true, spare: false, firstUsedBy: 'F9' },
  { test: /filler/, price: 'price.filler', pack: 'pack.filler', spare: false, firstUsedBy: 'D1' },
]
const ANY: Sold = { test: /./, price: 'price.piece', spare: false, firstUsedBy: 'F4' }

/** Screws, pins and anchors with a tenth spare, hinges, handles, glue: by the pack. */
export const hardwarePurchases = (context: PlanContext, built: Built): readonly Purchase[] =>
  byItem([...built.fixings.lines, holeFiller(context, built)].filter((line) => line.count > 0)).map((line) =>
    packed(context, line),
  )

/** Litres of filler for the holes of trim pins. */
export const fillerLitres = formula<{ holes: number; dab: number }, number>(
  {
    id: 'hardware.filler',
    plain: 'holes × filler of one hole',
    source: 'common practice, no source',
    gives: 'litres',
    units: { holes: 'count', dab: 'number' },
  },
  ({ holes, dab }) => (holes * dab) / MILLILITRES_PER_LITRE,
)
const MILLILITRES_PER_LITRE = 1000

const holeFiller = ({ figures }: PlanContext, built: Built): FixingLine => ({
  id: 'filler',
  item: 'fine wood filler',
  use: 'pin holes',
  count: within('filler', () =>
    fillerLitres({ holes: filledHoles(built.fixings.lines), dab: figures.number('filler.dab') }),
  ),
  unit: 'l',
})

/** Lines of one item together: the box on the shelf serves all its uses. */
const byItem = (lines: readonly FixingLine[]): readonly FixingLine[] =>
  [...new Set(lines.map((l) => `${l.item}|${l.unit}`))].flatMap((key) => {
    const same = lines.filter((l) => `${l.item}|${l.unit}` === key)
    const [first] = same
    if (first === undefined) return []
    return [
      {
        ...first,
        use: [...new Set(same.map((l) => l.use))].join('; '),
        count: within(`hardware.${first.id}`, () => countOfItem({ counts: same.map((l) => l.count) })),
      },
    ]
  })

/** What all uses of one item take. */
export const countOfItem = formula<{ counts: readonly number[] }, number>(
  {
    id: 'hardware.count',
    plain: 'sum over its uses',
    source: 'arithmetic',
    gives: 'number',
    from: { counts: [lineCount, fillerLitres] },
    units: { counts: 'number' },
  },
  ({ counts }) => counts.reduce((total, count) => total + count, 0),
)

const packed = (context: PlanContext, line: FixingLine): Purchase =>
  within(`hardware.${line.id}`, () => packedIn(context, line))

function packedIn({ figures }: PlanContext, line: FixingLine): Purchase {
  const sold = SOLD.find((s) => s.test.test(line.id)) ?? ANY
  const { unit } = line
  const packSize = sold.pack === undefined ? 1 : figures.number(sold.pack)
  const need = hardwareNeed({ count: line.count, spareShare: sold.spare ? figures.number('screws.spare') : 0, unit })
  const row = line.price ?? sold.price
  return {
    id: `hardware.${line.id}`,
    item: line.item,
    use: line.use,
    shop: 'hardware',
    need,
    unit,
    packSize,
    packs: packsFor({ need, packSize, unit }),
    spare: sold.spare ? 'a tenth spare is in the need' : '',
    priceEach: packPrice({
      [row.slice(row.lastIndexOf('.') + 1)]: figures.number(row),
      holds: sold.soldWhole === true ? 1 : packSize,
    }),
    priceKnown: priceKnown(figures, row),
    firstUsedBy: sold.firstUsedBy,
  }
}

/** What is bought of one kind of hardware: the count and its spare, whole pieces where it is counted in pieces. */
export const hardwareNeed = formula(
  {
    id: 'hardware.need',
    plain: 'count × (1 + share bought over it), up to whole pieces',
    source: 'common practice, no source',
    gives: 'number',
    from: { spareShare: { id: 'screws.spare' } },
    units: { count: 'number', spareShare: 'number' },
  },
  (of: { readonly count: number; readonly spareShare: number; readonly unit: string }): number => {
    const exact = of.count * (1 + of.spareShare)
    return of.unit === 'piece' ? Math.ceil(exact - HAIR) : exact
  },
)
const HAIR = 1e-9
