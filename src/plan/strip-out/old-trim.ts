import { baseboardFate, crownFate } from '../../job/chapters/cabinets.ts'
import { type Area, areaOf, squareMetres } from '../../units/area.ts'
import { inMetres, type Length, sum, ZERO } from '../../units/length.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'
import { lookAt } from '../settle.ts'
import type { RunnableWall } from '../survey/survey.ts'

/** Old trim that comes off: how many cuts, how many metres, and the painted face that is disturbed. */
export interface StripOut {
  readonly cuts: number
  readonly metres: number
  readonly area: Area
  /** One sentence a place: `left alcove: baseboard, 72 along the wall`. */
  readonly says: readonly string[]
}

interface Piece {
  readonly cuts: number
  readonly length: Length
  readonly height: Length
  readonly says: string
}

/** Baseboard and crown that make room for the boxes. Nothing where they are kept. */
export function stripOut(context: PlanContext, built: Built): StripOut {
  const look = lookAt(context.job, context.settle.used, undefined)
  const board = look(baseboardFate) ?? 'keep'
  const crown = look(crownFate) ?? 'keep'
  const pieces = [
    ...(board === 'keep' ? [] : boards(built, board)),
    ...(crown === 'keep' ? [] : built.slots.runs.filter((r) => r.kind === 'tall').map(crownOf)),
  ].filter((p) => p.length > 0 && p.height > 0)
  return {
    cuts: pieces.reduce((n, p) => n + p.cuts, 0),
    metres: pieces.reduce((m, p) => m + inMetres(p.length), 0),
    area: squareMetres(pieces.reduce((m2, p) => m2 + areaOf(p.length, p.height), 0)),
    says: pieces.map((p) => `${p.says}: ${context.show.length(p.length)} long, ${context.show.length(p.height)} high.`),
  }
}

function boards(built: Built, fate: 'cut' | 'remove'): readonly Piece[] {
  if (fate === 'cut') {
    return built.slots.runs.map((run) => ({
      cuts: 2,
      length: alongRun(run),
      height: run.wall.baseboard.height,
      says: `${run.bay.name}, baseboard`,
    }))
  }
  return built.survey.walls
    .filter((w): w is RunnableWall => w.kind !== 'breast')
    .map((w) => ({ cuts: 0, length: roundWall(w), height: w.baseboard.height, says: `${w.bay.name}, baseboard` }))
}

/** A run in an alcove stands on all three of its sides. */
const alongRun = (run: Run): Length => (run.wall.kind === 'alcove' ? roundWall(run.wall) : run.width)

const roundWall = (wall: RunnableWall): Length =>
  wall.kind === 'flat' ? wall.width : sum(wall.width, wall.returnLeft ?? ZERO, wall.returnRight ?? ZERO)

const crownOf = (run: Run): Piece => ({
  cuts: 2,
  length: run.width,
  height: run.wall.crown.drop,
  says: `${run.bay.name}, crown`,
})
