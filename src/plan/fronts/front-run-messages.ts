import { frontStyle, frontThickness, leavesPerBox } from '../../job/chapters/hardware.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { nanometres, times } from '../../units/length.ts'
import { kilograms } from '../../units/mass.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { leafTooBigForHinges, leafTooNarrow, leafTooThin, panelTooSmall } from './front-messages.ts'
import type { Leaf } from './fronts.ts'
import { hingeCount } from './hinges.ts'
import type { LeafMake } from './leaves.ts'

/** What stands in the way of the leaves; each kind of trouble is said once a box. */
export function frontMessages(
  context: PlanContext,
  plan: BoxPlan,
  make: LeafMake,
  leaves: readonly Leaf[],
): readonly Message[] {
  const [firstBox] = plan.boxes
  if (firstBox === undefined) return []
  return [
    ...tooThin(context, make),
    ...plan.boxes.flatMap((box) => {
      const here = leaves.filter((l) => l.box.id === box.id)
      const leaf = here[0]
      return leaf === undefined
        ? [tooNarrow(context, make, box)]
        : [...smallPanel(context, make, leaf), ...tooBig(context, leaf, here.length)]
    }),
  ]
}

const placeOf = (box: Box): string => `${box.run.bay.name}, box ${box.number}`

function tooThin(context: PlanContext, make: LeafMake): readonly Message[] {
  const { figures, show } = context
  const least = figures.length('hinge.leaf-least')
  if (make.thickness >= least) return []
  const values = {
    thickness: show.withUnit(make.thickness),
    least: show.withUnit(least),
    cup: show.withUnit(make.cup.depth),
  }
  const key = questionKey('job', frontThickness)
  const fixes = [{ says: `doors ${show.withUnit(least)} thick`, answers: [{ key, value: least }] }]
  return [raise(leafTooThin, { about: key, place: 'all doors', fixes }, values)]
}

function tooNarrow(context: PlanContext, make: LeafMake, box: Box): Message {
  const { show } = context
  const least = times(make.cup.fromEdge, 2)
  const values = { width: show.withUnit(box.width), least: show.withUnit(least) }
  const fixes = box.width > times(least, 2) ? [leavesFix(1)] : []
  return raise(leafTooNarrow, { about: questionKey('job', leavesPerBox), place: placeOf(box), fixes }, values)
}

function smallPanel(context: PlanContext, make: LeafMake, leaf: Leaf): readonly Message[] {
  const { figures, show, cut } = context
  const { width, height, thickness } = leaf
  const field = make.kind.field({ width, height, thickness, frame: make.frame, figures })
  const least = figures.length('door.panel-least')
  if (field === undefined || field >= least) return []
  const key = questionKey('job', frontStyle)
  const fixes = [{ says: 'slab doors', answers: [{ key, value: 'slab' }] }]
  const values = { panel: show.withUnit(cut.near(field)), least: show.withUnit(least) }
  return [raise(panelTooSmall, { about: key, place: placeOf(leaf.box), part: leaf.id, fixes }, values)]
}

const leavesFix = (value: number): Fix => ({
  says: `${value} ${value === 1 ? 'leaf' : 'leaves'} for each box`,
  answers: [{ key: questionKey('job', leavesPerBox), value }],
})

/** Leaves are tried up to this many a box. */
const MOST_LEAVES = 4

/** More and lighter leaves carry on hinges where it is not the height that is too much. */
function lighterLeaves({ figures }: PlanContext, leaf: Leaf, count: number): readonly Fix[] {
  const value = Array.from({ length: MOST_LEAVES - count }, (_, i) => count + i + 1).find((more) => {
    const part = count / more
    const one = { ...leaf, width: nanometres(Math.round(leaf.width * part)), mass: kilograms(leaf.mass * part) }
    return hingeCount({ ...one, figures }) !== undefined
  })
  return value === undefined ? [] : [leavesFix(value)]
}

function tooBig(context: PlanContext, leaf: Leaf, count: number): readonly Message[] {
  const { figures, show } = context
  if (hingeCount({ ...leaf, figures }) !== undefined) return []
  const values = {
    height: show.withUnit(leaf.height),
    mass: show.mass(leaf.mass),
    mostHeight: show.withUnit(figures.length('hinge.height-5')),
    mostMass: show.mass(figures.number('hinge.mass-5')),
  }
  const fixes = lighterLeaves(context, leaf, count)
  const where = { about: questionKey('job', leavesPerBox), place: placeOf(leaf.box), part: leaf.id, fixes }
  return [raise(leafTooBigForHinges, where, values)]
}
