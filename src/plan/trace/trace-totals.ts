import type { Quantity } from '../../things/formula.ts'
import { materialOf } from '../materials.ts'
import type { Price } from '../price/price.ts'
import { traceNodes, type Wanted } from './trace-tree.ts'
import type { Traceable } from './traceable.ts'
import type { Tracing } from './tracing.ts'

/** Sums and dates of the whole job; then each price line, material, purchase, task and joint. */
export const totalTraces = (on: Tracing): readonly Traceable[] => [
  ...sums(on),
  ...costLines(on),
  ...sheetOrders(on),
  ...purchases(on),
  ...taskHours(on),
  ...jointTraces(on),
]

const traceable = (on: Tracing, names: readonly string[], title: string, wanted: readonly Wanted[]): Traceable => ({
  names,
  trace: () => ({ title, says: [], nodes: traceNodes(on, wanted) }),
})

const MONEY_SUMS = [
  'sundries',
  'handling',
  'travel',
  'direct',
  'overhead',
  'contingency',
  'cost',
  'profit',
  'rounding',
  'discount',
  'beforeTax',
  'tax',
  'total',
] as const satisfies readonly (keyof Price)[]

function sums(on: Tracing): readonly Traceable[] {
  const { price, calendar } = on.plan
  const of = (name: string, value: unknown, as: Quantity): Wanted => ({ name, value, about: '', as })
  return [
    traceable(on, ['price', 'total', 'quote'], 'The price', [
      of('total', price.total, 'money'),
      of('beforeTax', price.beforeTax, 'money'),
      of('tax', price.tax, 'money'),
    ]),
    ...MONEY_SUMS.map((name) =>
      traceable(on, [name, `price ${spaced(name)}`, `price.${name}`], spaced(name), [of(name, price[name], 'money')]),
    ),
    traceable(on, ['hours'], 'Hours of the whole job', [of('hours', price.hours, 'hours')]),
    traceable(on, ['start'], 'The start', [of('start', calendar.start, 'days')]),
    traceable(on, ['finish', 'finish date', 'hand-over'], 'The hand-over', [of('finish', calendar.finish, 'days')]),
  ]
}

const spaced = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)

const costLines = (on: Tracing): readonly Traceable[] => {
  const { labour, materials, boughtIn } = on.plan.price
  return [...labour, ...materials, ...boughtIn].map(({ id, says, amount, quantity, each }) =>
    traceable(on, [id, `price ${id}`, says], `Price line: ${says}`, [
      { name: 'amount', value: amount, about: id, as: 'money' },
      { name: 'quantity', value: quantity, about: id, as: 'number' },
      { name: 'each', value: each, about: id, as: 'money' },
    ]),
  )
}

const sheetOrders = (on: Tracing): readonly Traceable[] => {
  const orders = [...on.plan.panels.order].map(([id, order]) => {
    const { name } = materialOf(id, on.figures)
    return {
      names: [id, name, `sheets ${name}`],
      title: `Sheets of ${name}`,
      wanted: (['sheets', 'spare', 'bound'] as const).map((n) => ({
        name: n,
        value: order[n],
        about: id,
        as: 'count' as const,
      })),
    }
  })
  return [
    ...orders.map(({ names, title, wanted }) => traceable(on, names, title, wanted)),
    traceable(
      on,
      ['sheets'],
      'Sheets to order',
      orders.flatMap((order) => order.wanted.slice(0, 1)),
    ),
  ]
}

const purchases = (on: Tracing): readonly Traceable[] =>
  on.plan.purchases.map((p) =>
    traceable(on, [p.id, p.item], `To buy: ${p.item}`, [
      { name: 'need', value: p.need, about: p.id, as: 'number' },
      { name: 'packSize', value: p.packSize, about: p.id, as: 'number' },
      { name: 'packs', value: p.packs, about: p.id, as: 'count' },
      { name: 'priceEach', value: p.priceEach, about: p.id, as: 'money' },
    ]),
  )

const taskHours = (on: Tracing): readonly Traceable[] =>
  on.plan.calendar.tasks.map((task) =>
    traceable(on, [task.id, task.title], `Task: ${task.title}`, [
      { name: 'hours', value: task.hours, about: task.id, as: 'hours' },
      { name: 'start', value: task.start, about: task.id, as: 'days' },
      { name: 'finish', value: task.finish, about: task.id, as: 'days' },
    ]),
  )

const jointTraces = (on: Tracing): readonly Traceable[] =>
  on.plan.joints.joints.map((joint) =>
    traceable(on, [`joint ${joint.number}`, joint.id], `Joint ${joint.number}: ${joint.where}`, [
      { name: 'length', value: joint.length, about: joint.id },
      { name: 'gap1', value: joint.gap1, about: joint.id },
      { name: 'gap2', value: joint.gap2, about: joint.id },
      { name: 'tape', value: joint.tape, about: joint.id },
      { name: 'caulk', value: joint.caulk, about: joint.id, as: 'litres' },
    ]),
  )
