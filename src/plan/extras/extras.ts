import { type ExtraRow, extraParts } from '../../job/chapters/extras.ts'
import { questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import { type Message, raise } from '../../things/message.ts'
import type { Part } from '../../things/part.ts'
import type { NamedBay } from '../../things/place.ts'
import { ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import type { Survey } from '../survey/survey.ts'
import { extrasAsGiven } from './extra-messages.ts'

export interface Extras {
  readonly parts: readonly Part[]
  readonly messages: readonly Message[]
}

/** Pieces that a person adds by hand, cut, coated, carried and priced with the rest; their size, place and fixing are as given. */
export function extras(context: PlanContext, { walls }: Pick<Survey, 'walls'>): Extras {
  const byBay = walls.map((wall) => ({ bay: wall.bay, parts: piecesOf(context, wall.bay, wall.originX) }))
  return {
    parts: byBay.flatMap(({ parts }) => parts),
    messages: byBay.filter(({ parts }) => parts.length > 0).map(({ bay, parts }) => asGiven(bay, parts)),
  }
}

function piecesOf({ settle }: PlanContext, bay: NamedBay, x: Part['placement']['x']): readonly Part[] {
  const rows = settle.choice(extraParts, bay, () => ({ value: [], because: 'nobody asked for any' }))
  return rows.map((row, at) => within(`${bay.id}/extra-${at + 1}`, () => pieceOf(bay, row, at + 1, x)))
}

const pieceOf = (bay: NamedBay, row: ExtraRow, number: number, x: Part['placement']['x']): Part =>
  madePart({
    id: `${bay.id}/extra-${number}`,
    mark: runPartMark(bay, 'Z', number),
    name: row.what.replace('-', ' '),
    bay: bay.id,
    goesTo: `${bay.name}, as you have it in mind`,
    quantity: row.count ?? 1,
    length: row.length,
    width: row.width,
    thickness: row.thickness,
    material: mdf(row.thickness),
    shows: row.coat === 'coated' ? 'both faces and all edges' : '',
    details: ['Added by hand: its size, place and fixing are your own.'],
    ...(row.coat === 'coated' ? { coat: { surface: 'built-in', faces: 2 } } : {}),
    placement: { x, y: ZERO, z: ZERO, dx: ZERO, dy: ZERO, dz: ZERO },
    waitsFor: [],
    from: { length: extraParts, width: extraParts, thickness: extraParts },
  })

const asGiven = (bay: NamedBay, parts: readonly Part[]): Message =>
  raise(
    extrasAsGiven,
    { about: questionKey(bay.id, extraParts), place: bay.name },
    { pieces: parts.map((p) => `${p.mark} ${p.name}`).join(', ') },
  )
