import type { MaterialId, Sheet, Stick } from '../../things/material.ts'
import type { Message } from '../../things/message.ts'
import type { Part } from '../../things/part.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'

export type Effort = 'quick' | 'thorough'

/** A part lying on a sheet; x along the sheet's length, y along its width, from the corner of the untrimmed sheet. */
export interface Laid {
  readonly part: Part
  readonly x: Length
  readonly y: Length
  readonly length: Length
  readonly width: Length
  readonly turned: boolean
}

/** One straight through-cut in the order it is sawn, in words and numbers. */
export interface SawCut {
  readonly number: number
  readonly says: string
  readonly direction: 'across' | 'along'
  /** Fence setting: what the cut leaves on the near side. */
  readonly fence: Length
}

export interface Offcut {
  readonly x: Length
  readonly y: Length
  readonly length: Length
  readonly width: Length
}

/** One sheet as it is sawn. */
export interface Layout {
  readonly material: Sheet
  /** 1 … over all sheets of the job. */
  readonly number: number
  readonly laid: readonly Laid[]
  readonly cuts: readonly SawCut[]
  /** Offcuts worth keeping. */
  readonly keep: readonly Offcut[]
  readonly waste: readonly Offcut[]
  /** Part area over sheet area. */
  readonly yield: number
  readonly mass: number
}

/** Sticks cut from stock lengths. */
export interface StickPlan {
  readonly material: Stick
  readonly bars: readonly {
    readonly pieces: readonly { readonly part: Part; readonly length: Length }[]
    readonly left: Length
  }[]
}

export interface PanelPlan {
  readonly layouts: readonly Layout[]
  readonly sticks: readonly StickPlan[]
  /** Sheets to order by material, spare included; and the least possible. */
  readonly order: ReadonlyMap<MaterialId, { readonly sheets: number; readonly spare: number; readonly bound: number }>
  readonly messages: readonly Message[]
}

/** Lays the made parts out on sheets and sticks. Parts on HOLD are counted at their assumed size and kept out of the saw order. */
export function panels(_context: PlanContext, _parts: readonly Part[], _effort: Effort): PanelPlan {
  return { layouts: [], sticks: [], order: new Map(), messages: [] }
}
