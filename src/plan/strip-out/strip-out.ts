import { REMOVALS } from '../../kinds/removal/list.ts'
import { formula } from '../../things/formula.ts'
import type { Message } from '../../things/message.ts'
import { type Area, areaOf, squareMetres } from '../../units/area.ts'
import type { PlanContext } from '../context.ts'
import type { TradeCall } from '../devices/device-opening.ts'
import type { MantelPlan } from '../mantel/mantel.ts'
import { type OldPaint, oldPaint } from './old-paint.ts'
import { type OldPiece, oldPieces } from './old-piece.ts'
import { type OldTrim, oldTrim, type TrimmedWall } from './old-trim.ts'
import { type Waste, wasteOf } from './waste.ts'

/** What comes off before anything new goes up, what it leaves behind, and what may be in it. */
export interface StripOut {
  readonly trim: OldTrim
  readonly pieces: readonly OldPiece[]
  readonly waste: Waste
  readonly paint: OldPaint
  /** Plaster to be made good, and floor laid bare. */
  readonly repair: { readonly wall: Area; readonly floor: Area }
  /** Wires and pipes in old pieces, made dead before they are touched. */
  readonly trades: readonly TradeCall[]
  readonly messages: readonly Message[]
}

/** Trim and old pieces that come off, worked out: hours, waste, making good, lead and asbestos. */
export function stripOut(context: PlanContext, wall: TrimmedWall, mantel: MantelPlan): StripOut {
  const trim = oldTrim(context, wall)
  const pieces = context.bays.flatMap((bay) => oldPieces(context, bay))
  const scraped = mantel.breasts.some((b) => b.paintedFace > 0)
  const paint = oldPaint(context, { trim, pieces, scraped })
  return {
    trim,
    pieces,
    waste: wasteOf(context, trim, pieces),
    paint,
    repair: { wall: madeGood({ trim: trim.area, pieces: patchedWall(pieces) }), floor: bareFloor(pieces) },
    trades: pieces.flatMap(callFor),
    messages: paint.messages,
  }
}

const onWall = (piece: OldPiece): boolean => REMOVALS[piece.row.what].leaves === 'wall'

/** Plaster made good: behind trim its whole face, behind pieces what their fixing spoils. */
const madeGood = formula<{ trim: Area; pieces: Area }, Area>(
  {
    id: 'removal.made-good',
    plain: 'face of the old trim + patches behind the old pieces',
    source: 'common practice, no source',
    gives: 'area',
  },
  ({ trim, pieces }) => squareMetres(trim + pieces),
)

const patchedWall = (pieces: readonly OldPiece[]): Area =>
  squareMetres(pieces.filter(onWall).reduce((m2, p) => m2 + p.patched, 0))

const bareFloor = (pieces: readonly OldPiece[]): Area =>
  squareMetres(
    pieces
      .filter((p) => !onWall(p))
      .reduce((m2, { row, quantity }) => m2 + areaOf(row.length, row.height) * quantity, 0),
  )

const TRADES = { wire: 'electrician', gas: 'gas fitter', pipe: 'heating fitter' } as const
const MADE_SAFE = {
  wire: 'power off, the wire proved dead and disconnected',
  gas: 'gas turned off, the pipe capped and tested',
  pipe: 'pipe drained and capped',
} as const

function callFor({ row, bay }: OldPiece): readonly TradeCall[] {
  if (row.holds === 'nothing') return []
  const says = `${bay.name}, old ${REMOVALS[row.what].says}: ${MADE_SAFE[row.holds]} before it is touched`
  return [{ trade: TRADES[row.holds], says, bay: bay.id }]
}
