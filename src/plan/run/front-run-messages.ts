import { frontStyle, frontThickness, leavesPerBox } from '../../job/chapters/hardware.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import { times } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { leafTooBigForHinges, leafTooNarrow, leafTooThin, panelTooSmall } from '../fronts/front-messages.ts'
import type { Leaf } from '../fronts/fronts.ts'
import { hingeCount } from '../fronts/hinges.ts'
import type { LeafMake } from '../fronts/leaves.ts'

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
      const leaf = leaves.find((l) => l.box.id === box.id)
      return leaf === undefined
        ? [tooNarrow(context, make, box)]
        : [...smallPanel(context, make, leaf), ...tooBig(context, leaf)]
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
  return [raise(leafTooThin, { about: questionKey('job', frontThickness), place: 'all doors' }, values)]
}

function tooNarrow(context: PlanContext, make: LeafMake, box: Box): Message {
  const { show } = context
  return raise(
    leafTooNarrow,
    { about: questionKey('job', leavesPerBox), place: placeOf(box) },
    { width: show.withUnit(box.width), least: show.withUnit(times(make.cup.fromEdge, 2)) },
  )
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

function tooBig(context: PlanContext, leaf: Leaf): readonly Message[] {
  const { figures, show } = context
  if (hingeCount({ ...leaf, figures }) !== undefined) return []
  const values = {
    height: show.withUnit(leaf.height),
    mass: show.mass(leaf.mass),
    mostHeight: show.withUnit(figures.length('hinge.height-5')),
    mostMass: show.mass(figures.number('hinge.mass-5')),
  }
  const where = { about: questionKey('job', leavesPerBox), place: placeOf(leaf.box), part: leaf.id }
  return [raise(leafTooBigForHinges, where, values)]
}
