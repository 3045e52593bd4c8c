import { baseboardFate, boxHeight, boxKind, crownFate, kick, kickSet, tallHeight } from '../../job/chapters/cabinets.ts'
import { floorFinish } from '../../job/chapters/floor-and-trim.ts'
import { baseboard as baseboardField, ceiling as ceilingField, crown as crownField } from '../../job/chapters/wall.ts'
import type { QuestionKey } from '../../things/field.ts'
import { formula, within } from '../../things/formula.ts'
import { type Length, less, longest, shortest, sum, times, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import type { RunnableWall, Survey, Wall } from '../survey/survey.ts'

/** A wall a run stands at, and the foot and top of its boxes. */
export interface RunLevel {
  readonly wall: RunnableWall
  readonly kind: 'base' | 'tall'
  readonly z0: Length
  readonly z1: Length
  readonly boxHeight: Length
  /** Measurements still to take that its foot and top rest on: the plinth is shared, so the baseboards of all runs. */
  readonly waitsFor: readonly QuestionKey[]
}

export interface Levels {
  /** Height of the plinth, shared by all runs of the wall. */
  readonly plinth: Length
  readonly baseboardKept: boolean
  readonly crownKept: boolean
  readonly kickSetBack: Length
  readonly runs: readonly RunLevel[]
}

/** The height of a box is asked for base boxes once, for tall ones at each wall. */
export const BOX_HEIGHTS = [boxHeight, tallHeight]

/** Least height of the boxes' underside: over the kept baseboard with a little of the wall to see. */
export const plinthHeight = formula<
  { kick: Length; floorFinish: Length; baseboard: Length; reveal: Length; kept: boolean },
  Length
>(
  {
    id: 'levels.plinth',
    plain: 'the larger of (kick height + floor still to be laid) and (kept baseboard + reveal)',
    source: 'common practice, no source',
    from: { kick: [kick, { id: 'kick.height' }], baseboard: baseboardField, reveal: { id: 'baseboard.reveal' } },
  },
  ({ kick: low, floorFinish: laid, baseboard, reveal, kept }) =>
    kept && baseboard > 0 ? longest(sum(low, laid), sum(baseboard, reveal)) : sum(low, laid),
)

/** Height of a tall box: under the ceiling, under a kept crown, on the plinth. */
export const tallBoxHeight = formula<
  { ceiling: Length; crown: Length; gap: Length; plinth: Length; cut: CutStep },
  Length
>(
  {
    id: 'levels.tall-box',
    plain: 'lowest ceiling − kept crown − gap − plinth, down to the cut step',
    source: 'common practice, no source',
    from: { ceiling: ceilingField, crown: crownField, gap: { id: 'top.gap' } },
  },
  ({ ceiling, crown, gap, plinth, cut }) => cut.down(less(ceiling, crown, gap, plinth)),
)

/** Height of the boxes' upper edge over the level line's zero. */
export const boxTopLine = formula<{ plinth: Length; boxHeight: Length }, Length>(
  {
    id: 'levels.box-top',
    plain: 'plinth + box height',
    source: 'geometry',
    from: { plinth: plinthHeight, boxHeight: BOX_HEIGHTS },
  },
  (of) => sum(of.plinth, of.boxHeight),
)

/** Fates of baseboard and crown, the shared plinth, and each run's box foot and top. All runs share one level line. */
export function levelsOf(context: PlanContext, survey: Survey): Levels {
  const { settle, figures } = context
  const standing = survey.walls.filter(isRunnable).flatMap((wall) => {
    const kind = settle.choice(boxKind, wall.bay, () => ({
      value: 'base' as const,
      because: 'a counter under the shelves',
    }))
    return kind === 'none' ? [] : [{ wall, kind }]
  })
  const highest = standing.reduce<Length>((most, { wall }) => longest(most, wall.baseboard.height), ZERO)
  const baseboardKept = settle.choice(baseboardFate, undefined, () => fateOf(context, highest)) === 'keep'
  const crownKept = crownKeptOf(context)
  const plinth = plinthOf(context, highest, baseboardKept)
  const kickSetBack = settle.choice(kickSet, undefined, () => ({
    value: figures.length('kick.set-back'),
    because: 'room for toes',
  }))
  const baseboards =
    settle.asked(baseboardFate, undefined) === 'cut' ? [] : standing.flatMap((s) => s.wall.waits.baseboard)
  const runs = standing.map(({ wall, kind }) =>
    within(wall.bay.id, () => {
      const crownDrop = crownKept ? wall.crown.drop : ZERO
      const height = kind === 'base' ? baseHeight(context) : tallHeightOf(context, wall, plinth, crownDrop)
      const waitsFor = [...baseboards, ...(kind === 'tall' ? wall.waits.ceiling : [])]
      return { wall, kind, waitsFor, z0: plinth, z1: boxTopLine({ plinth, boxHeight: height }), boxHeight: height }
    }),
  )
  return { plinth, baseboardKept, crownKept, kickSetBack, runs }
}

const isRunnable = (wall: Wall): wall is RunnableWall => wall.kind !== 'breast'

function fateOf(context: PlanContext, highest: Length) {
  const most = context.figures.length('baseboard.keep-most')
  return highest <= most
    ? { value: 'keep' as const, because: `not over ${context.show.withUnit(most)}: old paint stays whole` }
    : { value: 'cut' as const, because: `over ${context.show.withUnit(most)} it would lift the boxes too high` }
}

function plinthOf(context: PlanContext, baseboard: Length, kept: boolean): Length {
  const { settle, figures, show } = context
  const reveal = figures.length('baseboard.reveal')
  const usual = figures.length('kick.height')
  const laid = floorFinishOf(context)
  const needed = plinthHeight({ kick: usual, floorFinish: ZERO, baseboard, reveal, kept })
  const asked = settle.choice(kick, undefined, () => ({
    value: needed,
    because:
      needed > usual
        ? `baseboard ${show.length(baseboard)} + ${show.length(reveal)} to see of the wall`
        : 'a usual kick height',
  }))
  return plinthHeight({ kick: asked, floorFinish: laid, baseboard, reveal, kept })
}

/** Thickness of a floor still to be laid; 0 where the floor stays. */
export const floorFinishOf = ({ settle }: PlanContext): Length =>
  settle.choice(floorFinish, undefined, () => ({ value: ZERO, because: 'the floor there stays' }))

const baseHeight = (context: PlanContext): Length =>
  context.settle.choice(boxHeight, undefined, () => ({
    value: context.figures.length('box.height'),
    because: 'with plinth and counter a height to stand at',
  }))

/** The longest piece a sheet gives. */
const longestSide = formula<{ sheet: Length; trim: Length; cut: CutStep }, Length>(
  {
    id: 'levels.longest-side',
    plain: 'sheet − trim at both ends, down to the cut step',
    source: 'common practice, no source',
    from: { sheet: { id: 'sheet.length' }, trim: { id: 'sheet.trim' } },
  },
  ({ sheet, trim, cut }) => cut.down(less(sheet, times(trim, 2))),
)

/** Under the bay's lowest ceiling, and no side longer than a sheet gives. */
function tallHeightOf(context: PlanContext, wall: RunnableWall, plinth: Length, crownDrop: Length): Length {
  const { settle, figures, cut, show } = context
  const gap = figures.length('top.gap')
  const sheet = longestSide({ sheet: figures.length('sheet.length'), trim: figures.length('sheet.trim'), cut })
  const under = tallBoxHeight({ ceiling: wall.lowestCeiling, crown: crownDrop, gap, plinth, cut })
  return settle.choice(tallHeight, wall.bay, () => ({
    value: shortest(sheet, under),
    because:
      sheet < under ? 'the longest side a sheet gives' : `lowest ceiling less ${show.withUnit(gap)} and the plinth`,
  }))
}

/** How far a kept crown comes down at a wall. */
export const crownDropOf = (context: PlanContext, wall: RunnableWall): Length =>
  crownKeptOf(context) ? wall.crown.drop : ZERO

const crownKeptOf = (context: PlanContext): boolean =>
  context.settle.choice(crownFate, undefined, () => ({ value: 'keep' as const, because: 'it is old' })) === 'keep'
