import { onHold, type Part } from '../../things/part.ts'
import type { RequestLine } from '../../things/request.ts'
import type { Show } from '../../things/show.ts'
import type { SupplyKind } from './contract.ts'

/** Doors and drawer fronts made by a shop. */
export const boughtFronts: SupplyKind = {
  id: 'fronts',
  says: 'doors and drawer fronts',
  title: 'Doors',
  // The pieces of a drawer are its box, made here; its front is whole by then.
  takes: ({ role, piece }) => role === 'D' || (role === 'Y' && piece === undefined),
  pricedBy: 'piece',
  price: 'price.leaf-made',
  lead: 'lead.fronts',
  lines: (parts, show) => parts.map((part) => frontLine(part, show)),
  finish: () => [
    'Not painted: sanded 150, all edges eased by hand, no wax or oil.',
    'Both faces alike, so that they can be sprayed alike.',
  ],
}

const frontLine = (part: Part, show: Show): RequestLine => ({
  mark: part.mark,
  item: part.name,
  size: `${show.length(part.width)} wide × ${show.length(part.length)} high × ${show.withUnit(part.thickness)}`,
  quantity: part.quantity,
  details: part.details,
  hold: onHold(part),
})
