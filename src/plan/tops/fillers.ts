import { formula } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, longest, shortest, sum } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf, softwood } from '../materials.ts'
import type { Run } from '../run/slot.ts'

/** Finished width of a scribed filler at one height: the gap there, less a hair for the scribe. */
const fillerWidthAt = formula<{ gap: Length; fit: Length; cut: CutStep }, Length>(
  {
    id: 'filler.width',
    plain: 'front gap − scribe fit, to the nearest cut step',
    source: 'common practice, no source',
  },
  ({ gap, fit, cut }) => cut.near(less(gap, fit)),
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
    roughLength: cut.up(sum(run.boxHeight, figures.length('top.long'))),
    roughWidth: cut.up(sum(gapMost, figures.length('scribe.spare'))),
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
  })
}
