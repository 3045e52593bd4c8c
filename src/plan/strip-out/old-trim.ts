import { baseboardFate, crownFate } from '../../job/chapters/cabinets.ts'
import { within } from '../../things/formula.ts'
import { type Area, areaOf, squareMetres } from '../../units/area.ts'
import { inMetres, type Length, sum, ZERO } from '../../units/length.ts'
import { kilograms, type Mass } from '../../units/mass.ts'
import { litres, type Volume } from '../../units/volume.ts'
import type { PlanContext } from '../context.ts'
import type { Run, Slots } from '../run/slot.ts'
import { lookAt } from '../settle.ts'
import type { RunnableWall, Survey } from '../survey/survey.ts'
import { removedMass, solidVolume } from './removal-sums.ts'

/** Old trim that makes room for the boxes: how many cuts, how many metres, its painted face, and what it comes to as waste. */
export interface OldTrim {
  readonly cuts: number
  readonly metres: number
  readonly area: Area
  readonly volume: Volume
  readonly mass: Mass
  /** One sentence a place: `left alcove: baseboard, 72 along the wall`. */
  readonly says: readonly string[]
}

interface Piece {
  readonly id: string
  readonly cuts: number
  readonly length: Length
  readonly height: Length
  readonly depth: Length
  readonly says: string
}

/** Where trim runs: the wall, and the runs that stand before it. */
export interface TrimmedWall {
  readonly survey: Pick<Survey, 'walls'>
  readonly slots: Pick<Slots, 'runs'>
}

/** Baseboard and crown that make room for the boxes. Nothing where they are kept. */
export function oldTrim(context: PlanContext, built: TrimmedWall): OldTrim {
  const look = lookAt(context.job, context.settle.used, undefined)
  const board = look(baseboardFate) ?? 'keep'
  const crown = look(crownFate) ?? 'keep'
  const pieces = [
    ...(board === 'keep' ? [] : boards(built, board)),
    ...(crown === 'keep' ? [] : built.slots.runs.filter((r) => r.kind === 'tall').map(crownOf)),
  ].filter((p) => p.length > 0 && p.height > 0)
  const waste = pieces.map((piece) => within(piece.id, () => wasteOf(context, piece)))
  return {
    cuts: pieces.reduce((n, p) => n + p.cuts, 0),
    metres: pieces.reduce((m, p) => m + inMetres(p.length), 0),
    area: squareMetres(pieces.reduce((m2, p) => m2 + areaOf(p.length, p.height), 0)),
    volume: litres(waste.reduce((l, w) => l + w.volume, 0)),
    mass: kilograms(waste.reduce((kg, w) => kg + w.mass, 0)),
    says: pieces.map((p) => `${p.says}: ${context.show.length(p.length)} long, ${context.show.length(p.height)} high.`),
  }
}

function wasteOf({ figures }: PlanContext, { length, height, depth }: Piece) {
  const volume = solidVolume({ length, height, depth, solidShare: figures.number('removal.solid-trim') })
  return { volume, mass: removedMass({ solidVolume: volume, density: figures.number('density.softwood') }) }
}

function boards(built: TrimmedWall, fate: 'cut' | 'remove'): readonly Piece[] {
  if (fate === 'cut') {
    return built.slots.runs.map((run) => ({
      id: `${run.bay.id}/old-baseboard`,
      cuts: 2,
      length: alongRun(run),
      height: run.wall.baseboard.height,
      depth: run.wall.baseboard.thickness,
      says: `${run.bay.name}, baseboard`,
    }))
  }
  return built.survey.walls
    .filter((w): w is RunnableWall => w.kind !== 'breast')
    .map((w) => ({
      id: `${w.bay.id}/old-baseboard`,
      cuts: 0,
      length: roundWall(w),
      height: w.baseboard.height,
      depth: w.baseboard.thickness,
      says: `${w.bay.name}, baseboard`,
    }))
}

/** A run in an alcove stands on all three of its sides. */
const alongRun = (run: Run): Length => (run.wall.kind === 'alcove' ? roundWall(run.wall) : run.width)

const roundWall = (wall: RunnableWall): Length =>
  wall.kind === 'flat' ? wall.width : sum(wall.width, wall.returnLeft ?? ZERO, wall.returnRight ?? ZERO)

const crownOf = (run: Run): Piece => ({
  id: `${run.bay.id}/old-crown`,
  cuts: 2,
  length: run.width,
  height: run.wall.crown.drop,
  depth: run.wall.crown.projection,
  says: `${run.bay.name}, crown`,
})
