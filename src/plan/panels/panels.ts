import { within } from '../../things/formula.ts'
import type { MaterialId, Sheet, Stick } from '../../things/material.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import { onHold, type Part } from '../../things/part.ts'
import type { PlanContext } from '../context.ts'
import { materialOf } from '../materials.ts'
import { type Layout, layOut, type Sawing } from './layout.ts'
import { fitsStock, tooLarge } from './oversize.ts'
import type { Effort } from './pack.ts'
import { orderOf, type SheetOrder } from './sheet-order.ts'
import { cutSticks, type StickPlan } from './sticks.ts'

export type { Laid, Layout, Offcut } from './layout.ts'
export type { Effort } from './pack.ts'
export type { SawCut } from './saw-order.ts'
export type { SheetOrder } from './sheet-order.ts'
export type { StickPlan } from './sticks.ts'

export interface PanelPlan {
  readonly layouts: readonly Layout[]
  readonly sticks: readonly StickPlan[]
  /** Sheets to order by material, spare included; and the least possible. */
  readonly order: ReadonlyMap<MaterialId, SheetOrder>
  readonly messages: readonly Message[]
}

/** Sheets whose parts wait for a measurement: counted and ordered, not sawn. */
export const sheetsOnHold = messageKind<{ readonly sheets: string; readonly marks: string }>({
  code: 'N15',
  weight: 'note',
  source: 'common practice, no source',
  says: ({ sheets, marks }) => ({
    short: `Not to be sawn yet: ${sheets}.`,
    why: `These parts rest on a measurement still to be taken: ${marks}. They are counted at the size assumed for now.`,
    todo: 'Measure first; then the sizes are final and the sheets get their saw order.',
  }),
})

/**
 * Lays the made parts out on sheets and sticks. Parts on HOLD are counted at their assumed size on sheets of their own,
 * the last of their material, and have no saw order. A part no sheet holds is a stop, and left out.
 */
export function panels(context: PlanContext, parts: readonly Part[], effort: Effort): PanelPlan {
  const sawing = sawingOf(context, effort)
  const stocks = stocksOf(parts, context)
  const fitting = stocks.map(({ material, parts: all }) => ({
    material,
    parts: all.filter((part) => fitsStock(part, material, sawing)),
  }))
  const sheets = fitting.flatMap(({ material, parts: all }) =>
    material.kind === 'sheet' ? [{ material, parts: all }] : [],
  )
  const layouts = sheets
    .flatMap(({ material, parts: all }) => sheetsOf(material, all, sawing))
    .map((layout, at) => ({ ...layout, number: at + 1 }))
  return {
    layouts,
    sticks: fitting.flatMap(({ material, parts: all }) =>
      material.kind === 'stick' && all.length > 0
        ? [within(material.id, () => cutSticks(material, all, sawing.kerf))]
        : [],
    ),
    order: new Map(sheets.map((work) => [work.material.id, orderOf(work, layouts, context, sawing)])),
    messages: [
      ...stocks.flatMap(({ material, parts: all }) =>
        all
          .filter((part) => !onHold(part) && !fitsStock(part, material, sawing))
          .map((part) => tooLarge(part, material, sawing)),
      ),
      ...heldNotes(layouts),
    ],
  }
}

const sawingOf = ({ figures, show }: PlanContext, effort: Effort): Sawing => ({
  kerf: figures.length('saw.kerf'),
  trim: figures.length('sheet.trim'),
  keepLong: figures.length('offcut.keep-long'),
  keepShort: figures.length('offcut.keep-short'),
  aloneMost: figures.number('lift.alone'),
  effort,
  show,
})

interface Stock {
  readonly material: Sheet | Stick
  readonly parts: readonly Part[]
}

/** The made parts by material, in the order the parts name them. */
function stocksOf(parts: readonly Part[], { figures }: PlanContext): readonly Stock[] {
  const made = parts.filter((part) => part.supply === 'made' && part.roughLength > 0 && part.roughWidth > 0)
  return [...new Set(made.map((part) => part.material))].map((id) => ({
    material: materialOf(id, figures),
    parts: made.filter((part) => part.material === id),
  }))
}

/** Sheets to be sawn first, then those on HOLD. */
const sheetsOf = (material: Sheet, parts: readonly Part[], sawing: Sawing): readonly Layout[] => [
  ...layOut({ material, parts: parts.filter((part) => !onHold(part)), state: 'sheet' }, sawing),
  ...layOut({ material, parts: parts.filter(onHold), state: 'hold' }, sawing),
]

function heldNotes(layouts: readonly Layout[]): readonly Message[] {
  const held = layouts.filter((layout) => layout.state === 'hold')
  const parts = held.flatMap((layout) => layout.laid.map((l) => l.part))
  const [about] = parts.flatMap((part) => part.waitsFor)
  if (about === undefined) return []
  const values = {
    sheets: `sheet ${held.map((layout) => layout.number).join(', ')}`,
    marks: [...new Set(parts.map((part) => part.mark))].join(', '),
  }
  return [raise(sheetsOnHold, { about, place: 'panels' }, values)]
}
