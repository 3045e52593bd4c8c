import { HINGE_ARMS } from '../../figures/hardware.ts'
import { carcassThickness } from '../../job/chapters/cabinets.ts'
import { drawerFrontStyle } from '../../job/chapters/drawers.ts'
import { frontStyle, frontThickness, leavesPerBox } from '../../job/chapters/hardware.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less, longest, nanometres, shortest, sum, times, ZERO } from '../../units/length.ts'
import { kilograms } from '../../units/mass.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { parseMark } from '../marks.ts'
import type { Front } from './front.ts'
import { hingesDoNotLap, leafTooBigForHinges, leafTooNarrow, leafTooThin, panelTooSmall } from './front-messages.ts'
import type { Leaf } from './fronts.ts'
import { armFor, hingeCount } from './hinges.ts'
import type { LeafMake } from './leaves.ts'

/** What stands in the way of the leaves of the boxes that are to have some; each kind of trouble is said once a box. */
export function frontMessages(
  context: PlanContext,
  hung: readonly Box[],
  make: LeafMake,
  leaves: readonly Leaf[],
): readonly Message[] {
  if (hung.length === 0) return []
  return [
    ...tooThin(context, make),
    ...hung.flatMap((box) => {
      const here = leaves.filter((l) => l.box.id === box.id)
      const leaf = here[0]
      return leaf === undefined
        ? [tooNarrow(context, make, box)]
        : [...smallPanel(context, make, leaf), ...tooBig(context, leaf, here.length), ...noArm(context, make, here)]
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

/** A frame with too little inside it. */
export function smallPanel(
  { figures, show, cut }: PlanContext,
  make: Pick<LeafMake, 'kind' | 'frame'>,
  front: Front,
): readonly Message[] {
  const { width, height, thickness, from } = front
  const field = make.kind.field({ width, height, thickness, from, frame: make.frame, figures })
  const least = figures.length('door.panel-least')
  if (field === undefined || field >= least) return []
  const drawer = parseMark(front.mark)?.role === 'Y'
  const key = questionKey('job', drawer ? drawerFrontStyle : frontStyle)
  const fixes = [{ says: drawer ? 'slab drawer fronts' : 'slab doors', answers: [{ key, value: 'slab' }] }]
  const what = drawer ? 'drawer front' : 'leaf'
  const values = { what, panel: show.withUnit(cut.near(field)), least: show.withUnit(least) }
  return [raise(panelTooSmall, { about: key, place: placeOf(front.box), part: front.id, fixes }, values)]
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

/** A hinge that laps as far as the leaf does over its box side is not in the list. */
function noArm(
  { figures, show, cut }: PlanContext,
  { carcass }: LeafMake,
  leaves: readonly Leaf[],
): readonly Message[] {
  const leaf = leaves.find(({ arm }) => arm === undefined)
  if (leaf === undefined) return []
  const edge = (arm: string, end: 'least' | 'most') => figures.length(`hinge-arm.${arm}.${end}`)
  const ids = HINGE_ARMS.map(({ id }) => id)
  const least = shortestOf(ids.map((id) => edge(id, 'least')))
  const most = longestOf(ids.map((id) => edge(id, 'most')))
  // What of its side a leaf leaves bare stays, whatever the side's thickness: every leaf must find its hinge.
  const margins = leaves.map(({ overlay }) => less(carcass, overlay))
  const value = leaf.overlay > most ? cut.down(sum(most, shortestOf(margins))) : cut.up(sum(least, longestOf(margins)))
  const key = questionKey('job', carcassThickness)
  const laps = margins.every((margin) => armFor(less(value, margin), figures) !== undefined)
  const offered = laps && carcassThickness.schema.safeParse(value).success
  const fixes = offered ? [{ says: `box sides ${show.withUnit(value)} thick`, answers: [{ key, value }] }] : []
  const values = { overlay: show.withUnit(leaf.overlay), least: show.withUnit(least), most: show.withUnit(most) }
  const where = { about: key, place: placeOf(leaf.box), part: leaf.id, fixes }
  return [raise(hingesDoNotLap, where, values)]
}

const shortestOf = (lengths: readonly Length[]): Length => shortest(...firstAndRest(lengths))
const longestOf = (lengths: readonly Length[]): Length => longest(...firstAndRest(lengths))
const firstAndRest = ([first = ZERO, ...rest]: readonly Length[]): readonly [Length, ...Length[]] => [first, ...rest]
