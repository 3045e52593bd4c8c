import type { Figures } from '../../figures/figures.ts'
import { type Formula, formula } from '../../things/formula.ts'
import { type Hours, hours } from '../../units/hours.ts'

/** What is counted for each hour rate: `rate.box` of the figures is the hours of one box. Add work = one line here and its row. */
const COUNTED = {
  measure: 'bays',
  colours: 'agreements',
  order: 'orders, of all',
  request: 'requests',
  book: 'visits',
  'old-paint': 'checks',
  sheet: 'sheets',
  part: 'parts',
  'edge-band': 'metres of edge',
  box: 'boxes',
  'box-on-site': 'boxes',
  drawer: 'drawers',
  'leaf-framed': 'leaves',
  'leaf-routed': 'leaves',
  'leaf-slab': 'leaves and drawer fronts',
  drill: 'leaves and drawer fronts',
  'mantel-glue': 'mantels',
  'leg-glue': 'legs',
  'shelf-glue': 'shelves',
  prime: 'm² and coats',
  spray: 'm² and coats',
  brush: 'm² and coats',
  'carry-spray': 'ways there and back',
  wrap: 'loads',
  protect: 'rooms',
  'lead-safe': 'rooms',
  'trim-cut': 'cuts',
  'trim-strip': 'metres',
  'remove-mantel': 'pieces',
  'remove-shelf': 'pieces',
  'remove-cabinet': 'pieces',
  'remove-panel': 'm²',
  'remove-tiles': 'm²',
  'remove-floor': 'm²',
  'remove-wallpaper': 'm²',
  'waste-bag': 'bags',
  repair: 'm²',
  wash: 'm²',
  'masonry-coat': 'm² and coats',
  'wall-first': 'm²',
  'level-line': 'walls',
  plinth: 'bays',
  'cut-out': 'cut-outs',
  'stand-box': 'boxes',
  'join-box': 'joints',
  scribe: 'gables and fillers',
  counter: 'pieces',
  'kick-plate': 'kick plates',
  moulding: 'metres of moulding',
  'mantel-fix': 'mantels',
  'leg-fix': 'legs',
  cleats: 'shelves',
  'shelf-fix': 'shelves',
  hole: 'holes',
  tape: 'metres',
  caulk: 'metres',
  'touch-up': 'm²',
  hang: 'leaves',
  handle: 'handles',
  inside: 'boxes',
  'hang-drawer': 'drawers',
  'light-groove': 'lights',
  'light-strip': 'lights',
  'light-driver': 'drivers',
  extra: 'pieces',
  'hand-over': 'hand-overs',
  snag: 'visits',
} as const
export type RateId = keyof typeof COUNTED

/** So much of one kind of work. */
export interface Effort {
  readonly rate: RateId
  readonly count: number
}
export const effort = (rate: RateId, count: number): Effort => ({ rate, count })

type OfRate = Formula<{ count: number; perUnit: number }, number>

/** Hours of each kind of work: `how many × hours of one`. */
const HOURS_OF: ReadonlyMap<string, OfRate> = new Map(
  Object.entries(COUNTED).map(([id, counted]) => [
    id,
    formula<{ count: number; perUnit: number }, number>(
      {
        id: `hours.${id}`,
        plain: `${counted} × hours of one`,
        source: 'common practice, no source',
        gives: 'hours',
        from: { perUnit: { id: `rate.${id}` } },
        units: { count: 'number', perUnit: 'hours' },
      },
      ({ count, perUnit }) => count * perUnit,
    ),
  ]),
)

/** Hours of a task's work, exact: the sum of its kinds of work, and what a shop was promised. */
export const workHours = formula<Readonly<Record<string, number>>, number>(
  { id: 'tasks.work', plain: 'sum of the hours of its work', source: 'arithmetic', gives: 'hours' },
  (spent) => Object.values(spent).reduce((total, h) => total + h, 0),
)

const TENTHS = 10
/** A hair over a tenth is the tenth: sums of decimal rates miss it by a rounding error of the machine. */
const HAIR = 1e-9

/** Hours as they are printed and paid: up to the next tenth, so that sums on paper add up, for each of the people. */
export const taskHours = formula<{ work: number; people: 1 | 2 }, Hours>(
  {
    id: 'tasks.hours',
    plain: 'hours of its work, up to the next tenth × people',
    source: 'arithmetic',
    gives: 'hours',
    units: { people: 'count' },
  },
  ({ work, people }) => hours((Math.ceil(work * TENTHS - HAIR) / TENTHS) * people),
)

/** What one task's efforts come to; `promised` are hours worked out elsewhere, by name. */
export function hoursOf(
  figures: Figures,
  task: {
    readonly efforts: readonly Effort[]
    readonly promised: Readonly<Record<string, number>>
    readonly people: 1 | 2
  },
): Hours {
  const rates = [...new Set(task.efforts.map((e) => e.rate))]
  const spent = rates.map((rate) => {
    const of = HOURS_OF.get(rate)
    const count = task.efforts.filter((e) => e.rate === rate).reduce((n, e) => n + e.count, 0)
    return [rate, of === undefined ? 0 : of({ count, perUnit: figures.number(`rate.${rate}`) })] as const
  })
  const work = workHours({ ...Object.fromEntries(spent), ...task.promised })
  return taskHours({ work, people: task.people })
}
