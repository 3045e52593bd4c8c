import { boxCount, boxWidths, fillerWidth } from '../../job/chapters/cabinets.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, over, shortest, sum, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import type { AlcoveWall, RunnableWall } from '../survey/survey.ts'
import { fillerNominalOf, fitOf, gapsAlong, slotOf, slotWidth, type WallFit } from './run-fit.ts'
import type { RunLevel } from './run-levels.ts'
import type { Run, RunSide } from './slot.ts'

interface FittedSlot {
  readonly slot: Length
  readonly fitLeft: Length
  readonly fitRight: Length
}

/** The width of a run, in an alcove or on a flat wall. */
export const RUN_WIDTHS = [{ id: 'slot.run-width' }, { id: 'slot.flat-run-width' }]

/** A side of a run takes the filler's width or the caulked fit. */
const FITS = [fillerWidth, { id: 'filler.nominal' }, { id: 'caulk.fit' }]

/** What is left between the two fits, before it is cut down to the step. */
export const runRoom = formula<FittedSlot, Length>(
  {
    id: 'slot.run-room',
    plain: 'slot − left fit − right fit',
    source: 'geometry',
    from: { slot: slotWidth, fitLeft: FITS, fitRight: FITS },
  },
  ({ slot, fitLeft, fitRight }) => less(slot, fitLeft, fitRight),
)

/** Width of a run: rounded down because it must enter. */
export const runWidth = formula<{ room: Length; cut: CutStep }, Length>(
  {
    id: 'slot.run-width',
    plain: 'room for the run, down to the cut step',
    source: 'geometry',
    from: { room: runRoom },
  },
  ({ room, cut }) => cut.down(room),
)

const roundedOff = formula<{ room: Length; runWidth: Length }, Length>(
  { id: 'slot.left-over', plain: 'room for the run − run', source: 'geometry', from: { room: runRoom } },
  (of) => less(of.room, of.runWidth),
)

/** Where the run starts: the left-over of rounding is shared by two equal fits, else it goes to the filler. */
export const runStartX = formula<
  { low: Length; fitLeft: Length; leftOver: Length; kinds: readonly [WallFit, WallFit] },
  Length
>(
  {
    id: 'slot.start',
    plain: 'left limit + left fit + the left-over’s share',
    source: 'geometry',
    from: { low: { id: 'slot.left-limit' }, fitLeft: FITS },
  },
  ({ low, fitLeft, leftOver, kinds: [left, right] }) => {
    if (left === right) return sum(low, fitLeft, over(leftOver, 2))
    return left === 'filler' ? sum(low, fitLeft, leftOver) : sum(low, fitLeft)
  },
)

/** Where a run ends. */
export const runEnd = formula<{ start: Length; runWidth: Length }, Length>(
  {
    id: 'slot.run-end',
    plain: 'start of the run + its width',
    source: 'geometry',
    from: { start: [runStartX, { id: 'runStart' }], runWidth: RUN_WIDTHS },
  },
  (of) => sum(of.start, of.runWidth),
)

/** A run between two returns: as wide as the slot lets it, rounded down because it must enter. */
export function alcoveRun(context: PlanContext, level: RunLevel, wall: AlcoveWall): Run {
  const { cut, figures } = context
  const kinds = [fitOf(context, level, 'left'), fitOf(context, level, 'right')] as const
  const nominal = fillerNominalOf(context, wall, kinds.includes('filler') ? 'has a filler' : 'has none')
  const [fitLeft, fitRight] = kinds.map((kind) => (kind === 'filler' ? nominal : figures.length('caulk.fit')))
  const limits = slotOf(wall, level.z0, level.z1)
  const slot = slotWidth(limits)
  const room = runRoom({ slot, fitLeft: fitLeft ?? ZERO, fitRight: fitRight ?? ZERO })
  const width = runWidth({ room, cut })
  const leftOver = roundedOff({ room, runWidth: width })
  const startX = runStartX({ low: limits.low, fitLeft: fitLeft ?? ZERO, leftOver, kinds })
  return {
    bay: wall.bay,
    wall,
    kind: level.kind,
    z0: level.z0,
    z1: level.z1,
    boxHeight: level.boxHeight,
    slot,
    width,
    startX,
    boxCount: boxCountOf(context, wall, width),
    left: sideOf(kinds[0], gapsAlong(wall, level, 'left', startX)),
    right: sideOf(kinds[1], gapsAlong(wall, level, 'right', runEnd({ start: startX, runWidth: width }))),
    fillerNominal: nominal,
    waitsFor: runWaits(level),
  }
}

/** One side of a run with its front gaps from the foot to the top. */
export function sideOf(fit: Run['left']['fit'], gaps: readonly Length[]): RunSide {
  const [foot = ZERO, ...others] = gaps
  return {
    fit,
    gapFoot: foot,
    gapTop: gaps.at(-1) ?? foot,
    gapMost: longest(foot, ...others),
    gapLeast: shortest(foot, ...others),
  }
}

const fewestBoxes = formula<{ runWidth: Length; most: Length }, number>(
  {
    id: 'slot.boxes',
    plain: 'run ÷ widest box, up',
    source: 'common practice, no source',
    gives: 'count',
    from: { runWidth: RUN_WIDTHS, most: { id: 'box.most' } },
  },
  ({ runWidth: width, most }) => Math.max(1, Math.ceil(width / most)),
)

/** Fewest boxes that are not wider than the widest allowed, or as many as widths were asked for. */
export function boxCountOf(context: PlanContext, wall: RunnableWall, width: Length): number {
  const { settle, figures, show } = context
  const most = figures.length('box.most')
  const asked = settle.asked(boxWidths, wall.bay)
  return settle.choice(boxCount, wall.bay, () =>
    asked === undefined
      ? { value: fewestBoxes({ runWidth: width, most }), because: `fewest not wider than ${show.withUnit(most)}` }
      : { value: asked.length, because: 'as many as widths were given' },
  )
}

/** What the place and height of a run rest on. */
export const runWaits = ({ wall, waitsFor }: RunLevel): Run['waitsFor'] => [...wall.waits.widths, ...waitsFor]
