import type { Part, Role } from '../../things/part.ts'
import type { NamedBay } from '../../things/place.ts'
import type { Show } from '../../things/show.ts'
import type { Length } from '../../units/length.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'
import { fromLevelLine } from '../level-line.ts'
import { bothLegs } from '../mantel/mantel-legs.ts'
import type { SupplyRequest } from '../supply/supply.ts'

/** What the task table is computed from: the built plan, sorted by what is done with it. */
export interface Workload {
  readonly built: Built
  readonly show: Show
  readonly context: PlanContext
  /** Working days from an order to the thing on the bench. */
  readonly lead: (id: string) => number
  readonly dry: (id: string) => number
  /** Parts of a role, without those of the boxes' own (a counter is a `T` beside the boxes). */
  readonly loose: (role: Role) => readonly Part[]
  readonly request: (id: SupplyRequest['id']) => SupplyRequest | undefined
  /** A height as it is set out: above or below the level line. */
  readonly fromLine: (z: Length) => string
  readonly levelLine: Length
}

export function workloadOf(context: PlanContext, built: Built): Workload {
  const { figures, show } = context
  const boxMarks = new Set(built.boxes.boxes.map((b) => b.mark))
  const levelLine = figures.length('level-line.height')
  return {
    built,
    show,
    context,
    levelLine,
    lead: (id) => figures.number(`lead.${id}`),
    dry: (id) => figures.number(`dry.${id}`),
    loose: (role) => built.parts.filter((p) => roleOf(p.mark) === role && !boxMarks.has(ownerOf(p.mark))),
    request: (id) => built.supply.requests.find((r) => r.id === id),
    fromLine: (z) => fromLevelLine(context, z),
  }
}

const MARK = /^(.*)-([A-Z])\d*$/
/** The role letter of a mark: `S` of `L2-S1`. */
export const roleOf = (mark: string): string | undefined => MARK.exec(mark)?.[2]
/** What the part belongs to: `L2` (a box) of `L2-S1`, `L` (a bay) of `L-H1`. */
const ownerOf = (mark: string): string => MARK.exec(mark)?.[1] ?? mark

/** Legs under the mantels of the whole wall. */
export const legCount = ({ built }: Workload): number =>
  built.mantel.breasts.reduce((n, { mantel }) => n + (mantel?.legs === undefined ? 0 : bothLegs(mantel.legs).length), 0)

/** Marks of parts, each once, in their order. */
export const marksOf = (parts: readonly Pick<Part, 'mark'>[]): readonly string[] => [
  ...new Set(parts.map((p) => p.mark)),
]

/** How many pieces: the sum of quantities. */
export const countOf = (parts: readonly Part[]): number => parts.reduce((n, p) => n + p.quantity, 0)

/** Name of a bay by its id, in words. */
export const bayName = (bays: readonly NamedBay[], id: string): string => bays.find((b) => b.id === id)?.name ?? id

/** `L-U1: 38 1/2 × 10 5/8 × 5 3/8`, with the differing end behind it. The papers write HOLD where its size still waits. */
export const sized = (part: Part, show: Show): string =>
  `${named(part)}: ${show.length(part.length)} × ${show.length(part.width)} × ${show.length(part.thickness)}${
    part.taper === undefined ? '' : ` (${part.taper})`
  }`

/** `M-E1 top`: pieces that share a mark are told apart by what they are. */
const named = ({ mark, piece }: Part): string =>
  piece === undefined ? mark : piece.startsWith(mark) ? piece : `${mark} ${piece}`
