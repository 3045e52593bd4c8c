import { formula, within } from '../../things/formula.ts'
import type { Sheet } from '../../things/material.ts'
import type { Part } from '../../things/part.ts'
import type { Show } from '../../things/show.ts'
import { areaOf } from '../../units/area.ts'
import { inMetres, type Length, less, nanometres, sum, times } from '../../units/length.ts'
import type { Bed, Block, Spot } from './block.ts'
import { type Effort, pack } from './pack.ts'
import { type SawCut, type SawLine, sawOrder } from './saw-order.ts'
import { leavesOf, sawTree } from './saw-tree.ts'
import { fewestSheets } from './sheet-bound.ts'

/** A part lying on a sheet; x along the sheet's length, y along its width, from the corner of the untrimmed sheet. */
export interface Laid {
  readonly part: Part
  readonly x: Length
  readonly y: Length
  readonly length: Length
  readonly width: Length
  readonly turned: boolean
}

export interface Offcut {
  readonly x: Length
  readonly y: Length
  readonly length: Length
  readonly width: Length
}

/** A piece between two cuts, with its name on the saw sheet. */
export interface NamedOffcut extends Offcut {
  readonly name: string
}

/** One sheet as it is sawn. */
export interface Layout {
  readonly material: Sheet
  /** 1 … over all sheets of the job. */
  readonly number: number
  /** `sheet`: to be sawn now. `hold`: its parts wait for a measurement; it is counted, and has no saw order yet. */
  readonly state: 'sheet' | 'hold'
  readonly laid: readonly Laid[]
  readonly cuts: readonly SawCut[]
  /** The cuts as printed, one line for a row of cuts. */
  readonly lines: readonly SawLine[]
  /** Pieces that are sawn on, by the letters the saw order calls them. */
  readonly named: readonly NamedOffcut[]
  /** What each cut takes. */
  readonly kerf: Length
  /** Offcuts worth keeping. */
  readonly keep: readonly Offcut[]
  readonly waste: readonly Offcut[]
  /** Part area over sheet area. */
  readonly yield: number
  readonly mass: number
}

/** How the shop saws: what a cut takes, what is trimmed off, which offcuts are kept, how long layouts are searched. */
export interface Sawing {
  readonly kerf: Length
  readonly trim: Length
  readonly keepLong: Length
  readonly keepShort: Length
  /** Heaviest sheet one person rips whole, kg. */
  readonly aloneMost: number
  readonly effort: Effort
  readonly show: Show
}

/** Pieces of one material to lay on its sheets; `state` says whether they may be sawn yet. */
export interface SheetWork {
  readonly material: Sheet
  readonly parts: readonly Part[]
  readonly state: Layout['state']
}

/** The usable sheet: its nominal size less the trim all round, with one kerf added (as every block has one). */
export const bedOf = (material: Sheet, { kerf, trim }: Pick<Sawing, 'kerf' | 'trim'>): Bed => ({
  length: sum(less(material.sheetLength, times(trim, 2)), kerf),
  width: sum(less(material.sheetWidth, times(trim, 2)), kerf),
})

/** One block for each piece, at its rough size: what is left long is sawn long. */
export const blockOf = (part: Part, id: number, kerf: Length): Block => ({
  id,
  length: sum(part.roughLength, kerf),
  width: sum(part.roughWidth, kerf),
  mayTurn: part.grain === 'none',
})

/** Each part as often as it is needed. */
export const piecesOf = (parts: readonly Part[]): readonly Part[] =>
  parts.flatMap((part) => Array.from({ length: part.quantity }, () => part))

/** Lays all parts of one material out on its sheets. Every part must fit the sheet. Sheets are numbered from 1. */
export function layOut(work: SheetWork, sawing: Sawing): readonly Layout[] {
  const pieces = piecesOf(work.parts)
  const blocks = pieces.map((part, id) => blockOf(part, id, sawing.kerf))
  const bed = bedOf(work.material, sawing)
  const sheets = pack(blocks, bed, { effort: sawing.effort, least: fewestSheets({ blocks, bed }) })
  return sheets.map((spots, n) =>
    within(`${work.material.id}/${work.state}-${n + 1}`, () =>
      layoutOf({ work, pieces, spots, bed, number: n + 1 }, sawing),
    ),
  )
}

interface SheetInHand {
  readonly work: SheetWork
  readonly pieces: readonly Part[]
  readonly spots: readonly Spot[]
  readonly bed: Bed
  readonly number: number
}

function layoutOf({ work, pieces, spots, bed, number }: SheetInHand, sawing: Sawing): Layout {
  const { kerf, trim } = sawing
  const laid = spots.flatMap((spot): readonly Laid[] => {
    const part = pieces[spot.block]
    return part === undefined ? [] : [{ part, ...onSheet(withoutKerf(spot, kerf), trim), turned: spot.turned }]
  })
  const usable = { x: 0, y: 0, length: bed.length - kerf, width: bed.width - kerf }
  const tree = sawTree(
    spots.map((spot) => ({ ...spot, ...withoutKerf(spot, kerf) })),
    usable,
    { kerf, first: massOfSheet(work.material) > sawing.aloneMost ? 'across' : 'largest-waste' },
  )
  // The packer parts every sheet by straight cuts, so a tree is always found.
  if (tree === undefined) throw new RangeError(`Sheet ${number} cannot be sawn by through-cuts.`)
  const markOf = (block: number) => nameOf(pieces[block])
  const order = work.state === 'hold' ? NOT_YET : sawOrder(tree, { show: sawing.show, markOf, trim })
  const left = leavesOf(tree, 'waste').map((piece) => onSheet(piece, trim))
  const { material, state } = work
  return {
    material,
    number,
    state,
    laid,
    ...order,
    named: order.named.map((piece) => ({ name: piece.name, ...onSheet(piece, trim) })),
    kerf,
    keep: left.filter((offcut) => worthKeeping(offcut, sawing)),
    waste: left.filter((offcut) => !worthKeeping(offcut, sawing)),
    yield: sheetYield({
      partArea: laid.reduce((area, l) => area + areaOf(l.length, l.width), 0),
      sheetLength: material.sheetLength,
      sheetWidth: material.sheetWidth,
    }),
    mass: massOfSheet(material),
  }
}

const NOT_YET = { cuts: [], lines: [], named: [] } as const

interface Rectangle {
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
}

const withoutKerf = ({ x, y, length, width }: Rectangle, kerf: Length): Rectangle => ({
  x,
  y,
  length: length - kerf,
  width: width - kerf,
})

const onSheet = ({ x, y, length, width }: Rectangle, trim: Length): Offcut => ({
  x: nanometres(x + trim),
  y: nanometres(y + trim),
  length: nanometres(length),
  width: nanometres(width),
})

const nameOf = (part: Part | undefined): string =>
  part === undefined ? '' : part.piece === undefined ? part.mark : `${part.mark} ${part.piece}`

const worthKeeping = ({ length, width }: Offcut, { keepLong, keepShort }: Sawing): boolean =>
  Math.max(length, width) >= keepLong && Math.min(length, width) >= keepShort

/** Part area over sheet area: what of the sheet is used. */
export const sheetYield = formula(
  {
    id: 'panels.yield',
    plain: 'area of the parts on the sheet / (sheet length × sheet width)',
    source: 'geometry',
    gives: 'number',
    units: { partArea: 'area' },
  },
  (of: { readonly partArea: number; readonly sheetLength: Length; readonly sheetWidth: Length }): number =>
    of.partArea / areaOf(of.sheetLength, of.sheetWidth),
)

/** Mass of a whole sheet, kg: decides who lifts and saws it. */
export const sheetMass = formula(
  {
    id: 'panels.sheet-mass',
    plain: 'sheet length × sheet width × thickness × density',
    source: 'geometry',
    gives: 'mass',
    from: { density: [{ id: 'density.mdf' }, { id: 'density.plywood' }] },
    units: { thickness: 'length', density: 'number' },
  },
  (of: Pick<Sheet, 'sheetLength' | 'sheetWidth' | 'thickness' | 'density'>): number =>
    areaOf(of.sheetLength, of.sheetWidth) * inMetres(of.thickness) * of.density,
)

const massOfSheet = ({ sheetLength, sheetWidth, thickness, density }: Sheet): number =>
  sheetMass({ sheetLength, sheetWidth, thickness, density })
