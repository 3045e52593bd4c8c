import type { Shop } from '../things/supplies.ts'

/** The kinds of supplier in the order they are asked, and what each is called. */
export const SHOPS: Readonly<Record<Shop, string>> = {
  panels: 'panels',
  lumber: 'lumber',
  hardware: 'hardware',
  coatings: 'paint',
  sundries: 'sundries',
  boxes: 'box maker',
  fronts: 'door maker',
  spraying: 'spray shop',
}

export const SHOP_ORDER = Object.keys(SHOPS) as readonly Shop[]
