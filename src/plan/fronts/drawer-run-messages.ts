import { boxDepth } from '../../job/chapters/cabinets.ts'
import { type DrawerRow, drawers } from '../../job/chapters/drawers.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less, longest, size, sum, times, ZERO } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'
import { drawersAsked, type FrontsAsked } from './drawer-choice.ts'
import type { DrawerMake } from './drawer-make.ts'
import { drawerFrontsDoNotFit, drawersNowhere, drawerTooLow, noSlideFits } from './drawer-messages.ts'
import type { BoxDrawers } from './drawer-stack.ts'
import { smallPanel } from './front-run-messages.ts'
import type { LeafMake } from './leaves.ts'

interface Make {
  readonly leaf: LeafMake
  readonly drawer: DrawerMake
}

/** What stands in the way of the drawers; each kind of trouble is said once a box. */
export const drawerMessages = (
  context: PlanContext,
  plan: BoxPlan,
  make: Make,
  stacks: readonly BoxDrawers[],
): readonly Message[] => [
  ...runsOf(plan).flatMap((run) => nowhere(context, plan, run)),
  ...stacks.flatMap((stack) => {
    const [first] = stack.drawers
    const front = first === undefined ? [] : smallPanel(context, { ...make.leaf, kind: make.drawer.kind }, first)
    return [
      ...misfit(context, stack),
      ...noSlide(context, make.drawer, stack),
      ...tooLow(context, make, stack),
      ...front,
    ]
  }),
]

const runsOf = (plan: BoxPlan): readonly Run[] => [...new Set(plan.boxes.map((box) => box.run))]
const placeOf = (box: Box): string => `${box.run.bay.name}, box ${box.number}`
const keyOf = (run: Run) => questionKey(run.bay.id, drawers)

/** The answer again with other fronts for one box; none takes its drawers out. */
function answerWith(context: PlanContext, run: Run, number: number, fronts: FrontsAsked): readonly DrawerRow[] {
  return [...drawersAsked(context, run)].flatMap(([box, asked]) =>
    (box === number ? fronts : asked).map((height) => (height === undefined ? { box } : { box, height })),
  )
}

const fixOf = (context: PlanContext, box: Box, says: string, fronts: FrontsAsked): Fix => ({
  says,
  answers: [{ key: keyOf(box.run), value: answerWith(context, box.run, box.number, fronts) }],
})

function nowhere(context: PlanContext, plan: BoxPlan, run: Run): readonly Message[] {
  const there = plan.boxes.filter((box) => box.run === run).map((box) => box.number)
  const missing = [...drawersAsked(context, run).keys()].filter((number) => !there.includes(number))
  if (missing.length === 0) return []
  const value = [...drawersAsked(context, run)]
    .filter(([number]) => there.includes(number))
    .flatMap(([box, asked]) => asked.map((height) => (height === undefined ? { box } : { box, height })))
  const fixes = [{ says: 'only the drawers of boxes that are there', answers: [{ key: keyOf(run), value }] }]
  const boxes = `${there.length} ${there.length === 1 ? 'box' : 'boxes'}`
  return [
    raise(drawersNowhere, { about: keyOf(run), place: run.bay.name, fixes }, { numbers: missing.join(' and '), boxes }),
  ]
}

function misfit(context: PlanContext, { misfit: by, stack, asked }: BoxDrawers): readonly Message[] {
  if (by === undefined) return []
  const { show } = context
  const { box, height } = stack.face
  const last = asked[asked.length - 1]
  const lowest = last === undefined ? undefined : sum(last, by)
  const equal = asked.map(() => undefined)
  const fits = lowest !== undefined && lowest > 0
  const fixes = [
    ...(fits
      ? [fixOf(context, box, `lowest front ${show.withUnit(lowest)} high`, [...asked.slice(0, -1), lowest])]
      : []),
    fixOf(context, box, 'equal fronts', equal),
  ]
  const values = {
    face: show.withUnit(height),
    by: show.withUnit(size(by)),
    which: by < 0 ? 'are too high' : 'leave too little for a door',
    way: fits ? `The lowest front ${show.withUnit(lowest)} high fills it; equal ones do too` : 'Equal fronts fill it',
  }
  return [raise(drawerFrontsDoNotFit, { about: keyOf(box.run), place: placeOf(box), fixes }, values)]
}

function noSlide(context: PlanContext, { lengths }: DrawerMake, { slide, stack }: BoxDrawers): readonly Message[] {
  const [shortest] = lengths
  if (slide.length !== undefined || shortest === undefined) return []
  const { show, figures, cut } = context
  const { box } = stack.face
  const behind = figures.length('slide.behind')
  const depth = cut.up(sum(box.depth, less(sum(shortest, behind), slide.free)))
  const fixes = [
    {
      says: `boxes ${show.withUnit(depth)} deep`,
      answers: [{ key: questionKey(box.run.bay.id, boxDepth), value: depth }],
    },
  ]
  const values = {
    free: show.withUnit(slide.free),
    shortest: show.withUnit(shortest),
    behind: show.withUnit(behind),
    depth: show.withUnit(depth),
  }
  return [raise(noSlideFits, { about: keyOf(box.run), place: placeOf(box), fixes }, values)]
}

/** The front that gives a drawer box of the least height, wherever in the box it is. */
function leastFront({ figures, cut }: PlanContext, { leaf, drawer }: Make): Length {
  const over = figures.length('drawer.front-over')
  const panels = sum(times(leaf.carcass, 2), drawer.below, figures.length('drawer.above'))
  return cut.up(sum(drawer.leastHeight, longest(over, panels)))
}

function tooLow(context: PlanContext, make: Make, { stack, lowest, asked }: BoxDrawers): readonly Message[] {
  if (lowest === undefined) return []
  const { show, figures } = context
  const { box, height } = stack.face
  const least = leastFront(context, make)
  const gap = figures.length('door.gap')
  const most = Math.floor((height + gap) / (least + gap))
  const fewer = Math.max(0, Math.min(most, asked.length - 1))
  const says = fewer === 0 ? 'no drawers in this box' : `${fewer} equal ${fewer === 1 ? 'drawer' : 'drawers'}`
  const fixes = [
    fixOf(
      context,
      box,
      says,
      Array.from({ length: fewer }, () => undefined),
    ),
  ]
  const values = {
    height: show.withUnit(longest(lowest.body.height, ZERO)),
    least: show.withUnit(make.drawer.leastHeight),
    front: show.withUnit(least),
  }
  return [raise(drawerTooLow, { about: keyOf(box.run), place: placeOf(box), fixes }, values)]
}
