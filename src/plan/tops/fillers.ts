import { carcassThickness } from '../../job/chapters/cabinets.ts'
import { formula } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, longest, shortest, sum } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf, softwood } from '../materials.ts'
import { runGap } from '../run/run-fit.ts'
import { BOX_HEIGHTS } from '../run/run-levels.ts'
import type { Run } from '../run/slot.ts'

/** The gap a filler closes, in an alcove or on a flat wall. */
const GAPS = [runGap, { id: 'runStart' }, { id: 'slot.flat-gap' }]

/** Finished width of a scribed filler at one height: the gap there, less a hair for the scribe. */
const fillerWidthAt = formula<{ gap: Length; fit: Length; cut: CutStep }, Length>(
  {
    id: 'filler.width',
    plain: 'front gap − scribe fit, to the nearest cut step',
    source: 'common practice, no source',
    from: { gap: GAPS, fit: { id: 'scribe.fit' } },
  },
  ({ gap, fit, cut }) => cut.near(less(gap, fit)),
)

const roughLength = formula<{ boxHeight: Length; leftLong: Length; cut: CutStep }, Length>(
  {
    id: 'filler.rough-length',
    plain: 'box height + left long, up to the cut step',
    source: 'common practice, no source',
    from: { boxHeight: BOX_HEIGHTS, leftLong: { id: 'top.long' } },
  },
  (of) => of.cut.up(sum(of.boxHeight, of.leftLong)),
)

const roughWidth = formula<{ gap: Length; spare: Length; cut: CutStep }, Length>(
  {
    id: 'filler.rough-width',
    plain: 'widest front gap + spare for scribing, up to the cut step',
    source: 'common practice, no source',
    from: { gap: GAPS, spare: { id: 'scribe.spare' } },
  },
  ({ gap, spare, cut }) => cut.up(sum(gap, spare)),
)

export interface FillerAt {
  readonly run: Run
  readonly box: Box
  readonly side: 'left' | 'right'
  readonly number: number
  readonly thickness: Length
}

/** The strip that closes a run to its wall, in the plane of the box fronts, and the batten that holds it. */
export const fillerParts = (context: PlanContext, at: FillerAt): readonly Part[] => [
  filler(context, at),
  batten(context, at),
]

/** x of the run's end at this side, in the bay's own x. */
const runEnd = ({ run, side }: FillerAt): Length => (side === 'left' ? run.startX : sum(run.startX, run.width))

const shared = ({ run, side, number }: FillerAt) => ({
  mark: runPartMark(run.bay, 'F', number),
  bay: run.bay.id,
  goesTo: `${run.bay.name}, ${side} end of the run`,
  length: run.boxHeight,
  waitsFor: run.waitsFor,
})

/** Rear of the filler, flush with the box fronts. */
const rearOf = ({ box, thickness }: FillerAt): Length => less(sum(box.backGap, box.depth), thickness)

function filler({ figures, cut, show }: PlanContext, at: FillerAt): Part {
  const { run, side, thickness } = at
  const { gapFoot, gapTop, gapMost } = run[side]
  const fit = figures.length('scribe.fit')
  const foot = fillerWidthAt({ gap: gapFoot, fit, cut })
  const top = fillerWidthAt({ gap: gapTop, fit, cut })
  const width = longest(foot, top)
  return madePart({
    ...shared(at),
    id: `${run.bay.id}/filler-${side}`,
    name: 'wall filler',
    width,
    thickness,
    ...(foot === top ? {} : { taper: `${foot < top ? 'foot' : 'top'} ${show.length(shortest(foot, top))}` }),
    roughLength: roughLength({ boxHeight: run.boxHeight, leftLong: figures.length('top.long'), cut }),
    roughWidth: roughWidth({ gap: gapMost, spare: figures.length('scribe.spare'), cut }),
    leaveLong: 'wall edge scribed on site; length trimmed at the top',
    material: mdf(thickness),
    shows: 'front face',
    details: ['Flush with the box fronts; scribed to the wall, then screwed to its batten.'],
    coat: { surface: 'built-in', faces: 2 },
    placement: {
      x: sum(run.wall.originX, side === 'left' ? less(runEnd(at), width) : runEnd(at)),
      y: rearOf(at),
      z: run.z0,
      dx: width,
      dy: thickness,
      dz: run.boxHeight,
    },
    from: { length: BOX_HEIGHTS, width: fillerWidthAt, thickness: carcassThickness, roughLength, roughWidth },
  })
}

function batten({ figures }: PlanContext, at: FillerAt): Part {
  const { run, side, thickness } = at
  const width = figures.length('batten.width')
  return madePart({
    ...shared(at),
    id: `${run.bay.id}/filler-${side}-batten`,
    piece: 'batten',
    name: 'fixing batten',
    width,
    thickness,
    material: softwood(width, thickness),
    shows: '',
    details: ['On the box side, behind the filler.'],
    placement: {
      x: sum(run.wall.originX, side === 'left' ? less(runEnd(at), thickness) : runEnd(at)),
      y: less(rearOf(at), width),
      z: run.z0,
      dx: thickness,
      dy: width,
      dz: run.boxHeight,
    },
    from: { length: BOX_HEIGHTS, width: { id: 'batten.width' }, thickness: carcassThickness },
  })
}
