import type { Part } from '../../things/part.ts'
import { type Length, longest, sum, times } from '../../units/length.ts'
import type { BoxPlan } from '../boxes/boxes.ts'
import { ofBox } from '../fixings/masses.ts'
import type { MantelPlan } from '../mantel/mantel.ts'
import type { PanelPlan } from '../panels/panels.ts'
import type { ShelfPlan } from '../shelves/shelves.ts'

/** A thing carried in whole, its three outer sizes by name, as sawn: what is left long comes in too. */
export interface Carried {
  readonly id: string
  readonly mark: string
  readonly kind: 'box' | 'piece' | 'sheet'
  readonly sizes: readonly [NamedSize, NamedSize, NamedSize]
}
export interface NamedSize {
  readonly says: 'long' | 'high' | 'wide' | 'deep' | 'thick'
  readonly size: Length
}

export interface ToCarry {
  readonly parts: readonly Part[]
  readonly boxes: BoxPlan
  readonly shelves: ShelfPlan
  readonly mantel: MantelPlan
  readonly panels: Pick<PanelPlan, 'layouts'>
}

/** Boxes, shelves, mantels, every other part that is carried by itself, and whole sheets. What waits for a measurement is left out. */
export function thingsCarried(work: ToCarry): readonly Carried[] {
  const boxes = work.boxes.boxes.filter((b) => b.waitsFor.length === 0)
  const glued = new Set([
    ...work.shelves.shelves.map((s) => s.mark),
    ...work.mantel.breasts.flatMap((b) => (b.mantel === undefined ? [] : mantelMarks(work.parts, b.bay.id))),
  ])
  const loose = work.parts.filter((p) => !glued.has(p.mark) && !work.boxes.boxes.some((b) => ofBox(p, b)))
  return [
    ...boxes.map((b) => thing(b.id, b.mark, 'box', ['wide', b.width], ['high', b.height], ['deep', b.depth])),
    ...work.shelves.shelves.flatMap((shelf) => shelfCarried(work.parts, shelf)),
    ...work.mantel.breasts.flatMap((breast) => mantelCarried(work.parts, breast)),
    ...loose.filter((p) => p.waitsFor.length === 0).map(partCarried),
    ...sheets(work),
  ]
}

/** Panels of a box that is put together in the room are carried by themselves. */
export const panelsOf = (parts: readonly Part[], marks: ReadonlySet<string>): readonly Carried[] =>
  parts.filter((p) => [...marks].some((mark) => ofBox(p, { mark }))).map(partCarried)

type Sized = readonly [says: NamedSize['says'], size: Length]
const thing = (id: string, mark: string, kind: Carried['kind'], a: Sized, b: Sized, c: Sized): Carried => ({
  id,
  mark,
  kind,
  sizes: [named(a), named(b), named(c)],
})
const named = ([says, size]: Sized): NamedSize => ({ says, size })

const partCarried = (p: Part): Carried =>
  thing(p.id, p.mark, 'piece', ['long', p.roughLength], ['wide', p.roughWidth], ['thick', p.thickness])

const mantelMarks = (parts: readonly Part[], bay: string): readonly string[] =>
  parts.filter((p) => p.bay === bay && p.mark.includes('-E')).map((p) => p.mark)

function shelfCarried(parts: readonly Part[], shelf: ShelfPlan['shelves'][number]): readonly Carried[] {
  const [first, ...others] = parts.filter((p) => p.mark === shelf.mark)
  if (first === undefined || shelf.waitsFor.length > 0) return []
  const long = longest(first.roughLength, ...others.map((p) => p.roughLength))
  return [thing(shelf.id, shelf.mark, 'piece', ['long', long], ['deep', shelf.depth], ['thick', shelf.thickness])]
}

function mantelCarried(parts: readonly Part[], breast: MantelPlan['breasts'][number]): readonly Carried[] {
  const { mantel, bay } = breast
  const [first, ...others] = parts.filter((p) => p.bay === bay.id && p.mark.includes('-E'))
  if (mantel === undefined || first === undefined || breast.waitsFor.length > 0) return []
  const long = longest(first.roughLength, ...others.map((p) => p.roughLength))
  const high = sum(mantel.frieze, times(mantel.panel, mantel.layers))
  return [thing(`${bay.id}/mantel`, first.mark, 'piece', ['long', long], ['deep', mantel.depth], ['high', high])]
}

const sheets = ({ panels }: ToCarry): readonly Carried[] => {
  const kinds = new Map(panels.layouts.map(({ material }) => [material.id, material]))
  return [...kinds.values()].map((m) =>
    thing(m.id, m.name, 'sheet', ['long', m.sheetLength], ['wide', m.sheetWidth], ['thick', m.thickness]),
  )
}
