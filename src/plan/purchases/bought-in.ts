import { within } from '../../things/formula.ts'
import type { Purchase } from '../../things/supplies.ts'
import type { Built } from '../built.ts'
import type { SupplyRequest } from '../supply/supply.ts'
import { packPrice, packsFor } from './packs.ts'

const FIRST_USED = { boxes: 'W9', fronts: 'W7.1', spraying: 'W8' } as const

/** What outside shops make: one lot a request, at what it was quoted. */
export const boughtIn = (built: Built): readonly Purchase[] =>
  built.supply.requests.map((request) => within(`bought.${request.id}`, () => lotOf(request)))

const lotOf = (request: SupplyRequest): Purchase => ({
  id: `bought.${request.id}`,
  item: request.title,
  use: `${request.lines.reduce((n, l) => n + l.quantity, 0)} pieces by the request`,
  shop: request.id,
  need: 1,
  unit: 'lot',
  packSize: 1,
  packs: packsFor({ need: 1, packSize: 1, unit: 'lot' }),
  spare: '',
  priceEach: packPrice({ quoted: request.quoted }),
  priceKnown: request.quoteKnown,
  firstUsedBy: FIRST_USED[request.id],
})
