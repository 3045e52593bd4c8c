import { onHold, type Part } from '../../things/part.ts'
import type { RequestLine } from '../../things/request.ts'
import type { Show } from '../../things/show.ts'
import type { SupplyKind } from './contract.ts'

/** Painting by a spray shop: the parts stay in the cut list or in their own request, and go there and back. */
export const sprayingOut: SupplyKind = {
  id: 'spraying',
  says: 'spraying',
  title: 'Spraying',
  takes: () => false,
  pricedBy: 'area',
  price: 'price.spray-area',
  lead: 'lead.spraying',
  lines: (parts, show) => parts.map((part) => sprayLine(part, show)),
  finish: (colour) => [
    `Colour and sheen: ${colour === '' ? 'still to be named; do not start before it is' : colour}.`,
    'Raw MDF comes to you: seal every edge twice, sand smooth, prime, sand, top coats.',
    'With the work, a small tin of the same batch for touching up (about 100 ml), labelled with product and date.',
  ],
}

const FACES = ['no face', 'one face', 'both faces'] as const

const sprayLine = (part: Part, show: Show): RequestLine => ({
  mark: part.mark,
  item: part.piece === undefined ? part.name : `${part.name}, ${part.piece}`,
  size: `${show.length(part.roughLength)} × ${show.length(part.roughWidth)} × ${show.withUnit(part.thickness)}`,
  quantity: part.quantity,
  details: [`${FACES[part.coat?.faces ?? 0]} and all edges`, ...(part.shows === '' ? [] : [`seen: ${part.shows}`])],
  hold: onHold(part),
})
