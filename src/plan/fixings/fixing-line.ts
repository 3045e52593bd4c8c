import { formula, within } from '../../things/formula.ts'

/** One kind of fastener, hardware or glue: exact count, spare not included. */
export interface FixingLine {
  readonly id: string
  readonly item: string
  readonly use: string
  readonly count: number
  readonly unit: 'piece' | 'm' | 'kg' | 'l'
  /** Row of the prices of one unit, where its kind has its own. */
  readonly price?: string
}

/** What each place or piece takes, added up. */
export const ofPieces = formula<{ each: readonly number[] }, number>(
  {
    id: 'fixings.of-pieces',
    plain: 'sum of what each piece takes',
    source: 'common practice, no source',
    gives: 'number',
    units: { each: 'number' },
  },
  ({ each }) => each.reduce((total, count) => total + count, 0),
)

/** The same, as the count of the line with this id. */
export const countOver = (id: string, each: readonly number[]): number => within(id, () => ofPieces({ each }))

/** How many of one kind of fastener all its uses take. */
export const lineCount = formula<{ uses: readonly number[] }, number>(
  {
    id: 'fixings.count',
    plain: 'sum over where it is used',
    source: 'arithmetic',
    gives: 'number',
    from: { uses: [ofPieces, { id: 'fixings.instant-glue' }, { id: 'fixings.wood-glue' }] },
    units: { uses: 'number' },
  },
  ({ uses }) => uses.reduce((total, count) => total + count, 0),
)

/** One line for each id, counts added and uses joined; lines of nothing are left out. */
export function gathered(lines: readonly FixingLine[]): readonly FixingLine[] {
  const ids = [...new Set(lines.filter((line) => line.count > 0).map((line) => line.id))]
  return ids.flatMap((id) => {
    const same = lines.filter((line) => line.id === id && line.count > 0)
    const [first] = same
    if (first === undefined) return []
    const use = [...new Set(same.map((line) => line.use))].filter((text) => text !== '').join(', ')
    return [{ ...first, use, count: within(id, () => lineCount({ uses: same.map((line) => line.count) })) }]
  })
}
