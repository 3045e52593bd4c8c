import type { Box } from '../plan/boxes/boxes.ts'
import type { Drawer } from '../plan/fronts/drawers.ts'
import type { Leaf } from '../plan/fronts/fronts.ts'
import type { Breast } from '../plan/mantel/mantel.ts'
import type { Layout, StickPlan } from '../plan/panels/panels.ts'
import type { Price } from '../plan/price/price.ts'
import type { Shelf } from '../plan/shelves/shelves.ts'
import type { RequestLine, SupplyRequest } from '../plan/supply/supply.ts'
import type { Wall } from '../plan/survey/survey.ts'
import type { Joint } from '../things/joint.ts'
import type { Part } from '../things/part.ts'
import type { Purchase } from '../things/supplies.ts'
import type { DatedTask } from '../things/task.ts'
import type { Length } from '../units/length.ts'

/** What a helper may see of a part: all that is sawn, drilled, carried and set; nothing has a price. */
export const HELPER_PART = [
  'id',
  'mark',
  'piece',
  'name',
  'bay',
  'goesTo',
  'quantity',
  'length',
  'width',
  'thickness',
  'taper',
  'roughLength',
  'roughWidth',
  'leaveLong',
  'material',
  'grain',
  'shows',
  'details',
  'cutOuts',
  'supply',
  'placement',
  'waitsFor',
] as const satisfies readonly (keyof Part)[]
export type HelperPart = Pick<Part, (typeof HELPER_PART)[number]>

export const HELPER_TASK = [
  'id',
  'title',
  'hours',
  'people',
  'place',
  'wait',
  'marks',
  'tools',
  'setOut',
  'checks',
  'cautions',
  'start',
  'finish',
  'startsAt',
] as const satisfies readonly (keyof DatedTask)[]
export type HelperTask = Pick<DatedTask, (typeof HELPER_TASK)[number]>

export const HELPER_JOINT = [
  'id',
  'number',
  'bay',
  'where',
  'length',
  'gap1',
  'gap2',
  'ends',
  'colour',
  'twoColours',
  'kind',
  'passes',
  'tape',
  'rod',
  'waitsFor',
] as const satisfies readonly (keyof Joint)[]
export type HelperJoint = Pick<Joint, (typeof HELPER_JOINT)[number]>

export const HELPER_BOX = ['run', 'mark', 'id', 'x', 'width', 'height'] as const satisfies readonly (keyof Box)[]
export type HelperBox = Pick<Box, (typeof HELPER_BOX)[number]>

export const HELPER_LEAF = [
  'box',
  'mark',
  'x',
  'z',
  'width',
  'height',
  'hingeSide',
  'waitsFor',
] as const satisfies readonly (keyof Leaf)[]
export type HelperLeaf = Pick<Leaf, (typeof HELPER_LEAF)[number]>

export const HELPER_DRAWER = [
  'box',
  'mark',
  'x',
  'z',
  'width',
  'height',
  'waitsFor',
] as const satisfies readonly (keyof Drawer)[]
export type HelperDrawer = Pick<Drawer, (typeof HELPER_DRAWER)[number]>

export const HELPER_SHELF = [
  'bay',
  'number',
  'mark',
  'id',
  'z',
  'thickness',
  'depth',
  'backLength',
  'frontLength',
  'x',
  'offsetLeft',
  'offsetRight',
  'cleatTop',
  'waitsFor',
] as const satisfies readonly (keyof Shelf)[]
export type HelperShelf = Pick<Shelf, (typeof HELPER_SHELF)[number]>

export const HELPER_LAYOUT = [
  'material',
  'number',
  'state',
  'laid',
  'lines',
  'named',
  'kerf',
  'keep',
  'waste',
  'mass',
] as const satisfies readonly (keyof Layout)[]
export type HelperLayout = Omit<Pick<Layout, (typeof HELPER_LAYOUT)[number]>, 'laid'> & {
  readonly laid: readonly HelperLaid[]
}
export interface HelperLaid extends Omit<Layout['laid'][number], 'part'> {
  readonly part: HelperPart
}

export const HELPER_STICK = ['material', 'bars'] as const satisfies readonly (keyof StickPlan)[]
export interface HelperStickPlan {
  readonly material: StickPlan['material']
  readonly bars: readonly {
    readonly pieces: readonly { readonly part: HelperPart; readonly length: Length }[]
    readonly left: Length
  }[]
}

export const HELPER_WALL = [
  'bay',
  'kind',
  'originX',
  'width',
  'lowestCeiling',
  'waits',
] as const satisfies readonly (keyof Wall)[]
export interface HelperWall extends Pick<Wall, (typeof HELPER_WALL)[number]> {
  /** How far a kept crown comes down and a kept baseboard comes up; 0 = there is none, or it goes. */
  readonly crown: Length
  readonly baseboard: Length
}

export const HELPER_BREAST = [
  'bay',
  'opening',
  'mantel',
  'screen',
  'waitsFor',
] as const satisfies readonly (keyof Breast)[]

/** An outside shop sees what it makes: never what another was quoted, nor for whom it is. */
export const SHOP_REQUEST = [
  'id',
  'title',
  'finish',
  'drilling',
  'area',
] as const satisfies readonly (keyof SupplyRequest)[]
export const SHOP_LINE = [
  'mark',
  'item',
  'size',
  'quantity',
  'details',
  'hold',
] as const satisfies readonly (keyof RequestLine)[]
export type ShopLine = Pick<RequestLine, (typeof SHOP_LINE)[number]>
export type ShopRequest = Pick<SupplyRequest, (typeof SHOP_REQUEST)[number]> & { readonly lines: readonly ShopLine[] }

export const OFFICE_PURCHASE = [
  'id',
  'item',
  'use',
  'shop',
  'need',
  'unit',
  'packSize',
  'packs',
  'spare',
  'priceEach',
  'priceKnown',
] as const satisfies readonly (keyof Purchase)[]
export type OfficePurchase = Pick<Purchase, (typeof OFFICE_PURCHASE)[number]>

export const OFFICE_PRICE = [
  'labour',
  'materials',
  'boughtIn',
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
  'rates',
  'stages',
  'hours',
] as const satisfies readonly (keyof Price)[]
export type OfficePrice = Pick<Price, (typeof OFFICE_PRICE)[number]>

/** The client sees the price, its tax and its stages: not how it came about. */
export const CLIENT_PRICE = ['beforeTax', 'tax', 'total', 'stages'] as const satisfies readonly (keyof Price)[]
export type ClientPrice = Pick<Price, (typeof CLIENT_PRICE)[number]> & { readonly taxPercent: number }
