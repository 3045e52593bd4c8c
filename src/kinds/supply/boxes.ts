import { onHold, type Part, type Placement, type Role } from '../../things/part.ts'
import type { RequestLine } from '../../things/request.ts'
import type { Show } from '../../things/show.ts'
import { nanometres } from '../../units/length.ts'
import type { SupplyKind } from './contract.ts'

const BOX_ROLES: readonly Role[] = ['S', 'T', 'B', 'K', 'A', 'J', 'X', 'N']

const TO_BE_PAINTED = [
  'Not painted: edges sanded smooth, faces clean, no wax or oil.',
  'Double-refined MDF, so that it can be sprayed.',
] as const
const PREFINISHED = [
  'Prefinished panel, both faces finished by its maker; nothing is painted afterwards.',
  'Matching edge band on every edge that shows, trimmed flush.',
] as const

/** Boxes made by a shop: every part of a box but its leaves. */
export const boughtBoxes: SupplyKind = {
  id: 'boxes',
  says: 'boxes',
  title: 'Boxes',
  takes: ({ role, ofBox }) => ofBox && role !== undefined && BOX_ROLES.includes(role),
  pricedBy: 'piece',
  price: 'price.box-made',
  lead: 'lead.boxes',
  lines: boxLines,
  finish: (_colour, parts) => (parts.some((part) => part.coat !== undefined) ? TO_BE_PAINTED : PREFINISHED),
}

/** One line a box, its parts with their own sizes below it. */
function boxLines(parts: readonly Part[], show: Show): readonly RequestLine[] {
  const marks = [...new Set(parts.map(boxOf))]
  return marks.map((mark) => {
    const own = parts.filter((part) => boxOf(part) === mark)
    const { dx, dy, dz } = boxAround(own.map((part) => part.placement))
    return {
      mark,
      item: 'box',
      size: `${show.length(dx)} wide × ${show.length(dz)} high × ${show.withUnit(dy)} deep`,
      quantity: 1,
      details: own.flatMap((part) => [partWords(part, show), ...cutOutWords(part, show)]),
      hold: own.some(onHold),
    }
  })
}

const boxOf = (part: Part): string => part.mark.slice(0, part.mark.indexOf('-'))

function partWords({ mark, name, piece, quantity, length, width, thickness, details }: Part, show: Show): string {
  const what = `${quantity} × ${mark} ${piece ?? name}`
  const size = `${show.length(length)} × ${show.length(width)} × ${show.withUnit(thickness)}`
  return [`${what}, ${size}`, ...details].join('; ')
}

const cutOutWords = (part: Part, show: Show): readonly string[] =>
  part.cutOuts.map(
    (hole) =>
      `${part.mark} cut-out for ${hole.what}: ${show.length(hole.width)} × ${show.length(hole.height)}, ` +
      `${show.length(hole.x)} from its left and ${show.withUnit(hole.z)} from its lower edge, seen from the front`,
  )

/** The smallest box around several. */
function boxAround(all: readonly Placement[]): Pick<Placement, 'dx' | 'dy' | 'dz'> {
  const span = (from: 'x' | 'y' | 'z', size: 'dx' | 'dy' | 'dz') =>
    nanometres(Math.max(...all.map((p) => p[from] + p[size])) - Math.min(...all.map((p) => p[from])))
  return { dx: span('x', 'dx'), dy: span('y', 'dy'), dz: span('z', 'dz') }
}
