import { boxCount, boxWidths } from '../../job/chapters/cabinets.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, over, shortest, sum, ZERO } from '../../units/length.ts'
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

/** What is left between the two fits, before it is cut down to the step. */
export const runRoom = formula<FittedSlot, Length>(
  { id: 'slot.run-room', plain: 'slot − left fit − right fit', source: 'geometry' },
  ({ slot, fitLeft, fitRight }) => less(slot, fitLeft, fitRight),
)

/** Where the run starts: the left-over of rounding is shared by two equal fits, else it goes to the filler. */
export const runStartX = formula<
  { low: Length; fitLeft: Length; leftOver: Length; kinds: readonly [WallFit, WallFit] },
  Length
>(
  { id: 'slot.start', plain: 'left limit + left fit + the left-over’s share', source: 'geometry' },
  ({ low, fitLeft, leftOver, kinds: [left, right] }) => {
    if (left === right) return sum(low, fitLeft, over(leftOver, 2))
    return left === 'filler' ? sum(low, fitLeft, leftOver) : sum(low, fitLeft)
  },
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
  const width = cut.down(room)
  const startX = runStartX({ low: limits.low, fitLeft: fitLeft ?? ZERO, leftOver: less(room, width), kinds })
  return {
    bay: wall.bay,
    wall,
    kind: level.kind,
    z0: level.z0,
    z1: level.z1,
    boxHeight: less(level.z1, level.z0),
    slot,
    width,
    startX,
    boxCount: boxCountOf(context, wall, width),
    left: sideOf(kinds[0], gapsAlong(wall, level, 'left', startX)),
    right: sideOf(kinds[1], gapsAlong(wall, level, 'right', sum(startX, width))),
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

/** Fewest boxes that are not wider than the widest allowed, or as many as widths were asked for. */
export function boxCountOf(context: PlanContext, wall: RunnableWall, width: Length): number {
  const { settle, figures, show } = context
  const most = figures.length('box.most')
  const asked = settle.asked(boxWidths, wall.bay)
  return settle.choice(boxCount, wall.bay, () =>
    asked === undefined
      ? { value: Math.max(1, Math.ceil(width / most)), because: `fewest not wider than ${show.withUnit(most)}` }
      : { value: asked.length, because: 'as many as widths were given' },
  )
}

/** What the place and height of a run rest on. */
export const runWaits = ({ wall, waitsFor }: RunLevel): Run['waitsFor'] => [...wall.waits.widths, ...waitsFor]
