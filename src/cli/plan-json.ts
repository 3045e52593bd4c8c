import { only } from '../documents/only.ts'
import type { Layout, StickPlan } from '../plan/panels/panels.ts'
import type { Plan } from '../plan/plan.ts'
import type { Message } from '../things/message.ts'
import { onHold, type Part } from '../things/part.ts'
import {
  BOX_FIELDS,
  CALENDAR_FIELDS,
  COATING_FIELDS,
  COATING_LINE_FIELDS,
  FIXING_FIELDS,
  JOINT_FIELDS,
  LAID_FIELDS,
  LAYOUT_FIELDS,
  MESSAGE_FIELDS,
  PART_FIELDS,
  PRICE_FIELDS,
  PURCHASE_FIELDS,
  REQUEST_FIELDS,
  RUN_FIELDS,
  SHEET_ORDER_FIELDS,
  SHELF_FIELDS,
  TASK_FIELDS,
  USED_FIELDS,
} from './plan-fields.ts'

const VERSION = 1

/** Units of every number in the document, said once. */
const UNITS = {
  length: 'nm',
  money: 'minor units of the currency',
  time: 'h',
  mass: 'kg',
  area: 'm²',
  volume: 'l',
  day: 'ISO 8601',
} as const

/** The whole plan as plain JSON: each field that is handed out stands here or in `plan-fields.ts`, so that the form changes only on purpose. */
export const planJson = (plan: Plan) => ({
  format: 'nichework-plan',
  version: VERSION,
  units: UNITS,
  currency: plan.show.currency,
  unitSystem: plan.show.units,
  job: { id: plan.job.id, created: plan.job.created, demo: plan.job.demo ?? false, figures: plan.job.figures },
  bays: plan.bays,
  used: [...plan.used.values()].map((used) => only(used, USED_FIELDS)),
  runs: plan.slots.runs.map((run) => ({
    bay: run.bay.id,
    ...only(run, RUN_FIELDS),
  })),
  plinth: plan.slots.plinth,
  boxes: plan.boxes.boxes.map((box) => ({
    bay: box.run.bay.id,
    ...only(box, BOX_FIELDS),
  })),
  shelves: plan.shelves.shelves.map((shelf) => ({
    bay: shelf.bay.id,
    ...only(shelf, SHELF_FIELDS),
  })),
  parts: plan.parts.map(partJson),
  joints: plan.joints.joints.map((joint) => only(joint, JOINT_FIELDS)),
  layouts: plan.panels.layouts.map(layoutJson),
  sticks: plan.panels.sticks.map(stickJson),
  sheets: [...plan.panels.order].map(([material, order]) => ({
    material,
    ...only(order, SHEET_ORDER_FIELDS),
  })),
  coating: {
    ...only(plan.coating, COATING_FIELDS),
    lines: plan.coating.lines.map((line) => only(line, COATING_LINE_FIELDS)),
  },
  fixings: plan.fixings.lines.map((line) => only(line, FIXING_FIELDS)),
  requests: plan.supply.requests.map((request) => only(request, REQUEST_FIELDS)),
  purchases: plan.purchases.map((purchase) => only(purchase, PURCHASE_FIELDS)),
  calendar: { ...only(plan.calendar, CALENDAR_FIELDS), tasks: plan.calendar.tasks.map(taskJson) },
  price: priceJson(plan),
  messages: plan.messages.map(messageJson),
})

const partJson = (part: Part) => ({
  id: part.id,
  mark: part.mark,
  piece: part.piece,
  name: part.name,
  bay: part.bay,
  goesTo: part.goesTo,
  quantity: part.quantity,
  finished: { length: part.length, width: part.width, thickness: part.thickness, taper: part.taper },
  rough: { length: part.roughLength, width: part.roughWidth, leaveLong: part.leaveLong },
  ...only(part, PART_FIELDS),
  hold: onHold(part),
})

const layoutJson = (layout: Layout) => ({
  material: layout.material,
  ...only(layout, LAYOUT_FIELDS),
  laid: layout.laid.map((laid) => ({
    part: laid.part.id,
    mark: laid.part.mark,
    ...only(laid, LAID_FIELDS),
  })),
})

const stickJson = ({ material, bars }: StickPlan) => ({
  material,
  bars: bars.map(({ pieces, left }) => ({
    left,
    pieces: pieces.map(({ part, length }) => ({ part: part.id, mark: part.mark, length })),
  })),
})

const taskJson = (task: Plan['calendar']['tasks'][number]) => only(task, TASK_FIELDS)

const priceJson = ({ price }: Plan) => only(price, PRICE_FIELDS)

/** A message with its words and the numbers behind them. */
export const messageJson = (message: Message) => only(message, MESSAGE_FIELDS)
