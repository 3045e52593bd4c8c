import { largestScale } from '../../geometry/scale.ts'
import type { NamedBay } from '../../things/place.ts'
import { showDay } from '../../units/day.ts'
import { type ForHelper, forHelper } from '../audience.ts'
import type { HelperJoint } from '../audience-fields.ts'
import { type Block, type Cell, fact, factOf, type Paper, type Section, type TableColumn, TICK } from '../block.ts'
import type { Assets, PacketDocument } from '../document.ts'
import { paperSize, unitWord } from '../paper-size.ts'
import { words } from '../words/template.ts'
import { writePdf } from '../write/pdf.ts'
import { jointPicture } from './joint-picture.ts'

/** Every joint between new work and old wall, one row each. */
export const touchUpPlan: PacketDocument = {
  id: 'touch-up-plan',
  reader: 'helper',
  says: 'touch-up plan',
  needed: (plan) => plan.joints.joints.length > 0,
  write: async (plan, assets, stamp) => {
    const paper = touchUpPaper(forHelper(plan), assets)
    return [{ path: 'helper/touch-up-plan.pdf', bytes: await writePdf(paper, assets, stamp) }]
  },
}

/** How it is done and when, then bay by bay the picture with its joint numbers and the rows. */
export const touchUpPaper = (view: ForHelper, assets: Assets): Paper => ({
  name: 'touch-up plan',
  job: view.title,
  size: paperSize(view.show.units),
  sections: [howPage(view, assets), ...view.bays.flatMap((bay) => baySection(bay, view))],
})

const howPage = (view: ForHelper, assets: Assets): Section => ({
  turned: 'upright',
  title: 'Touch-up plan',
  under: `${view.title} · ${view.joints.length} joints · all sizes in ${unitWord(view.show.units)}`,
  blocks: [
    ...factOf('built-in', view.colours.builtIn === '' ? [] : [view.colours.builtIn]),
    ...factOf('wall', view.colours.wall === '' ? [] : [view.colours.wall]),
    ...dateBlocks(view),
    ...words('touch-up-how.md', assets.templates, {
      passes: String(view.passes),
      unit: unitWord(view.show.units),
      tapeDays: tapeDays(view),
    }),
  ],
})

/** Tape, each pass of caulk, paint: the days the calendar gives them. */
const TOUCH_UP_TASKS = /^D[1-4](\.\d+)?$/

const touchUpTasks = (view: ForHelper) => view.tasks.filter((task) => TOUCH_UP_TASKS.test(task.id))

const dateBlocks = (view: ForHelper): readonly Block[] =>
  touchUpTasks(view).map((task, i) => ({
    ...fact(i === 0 ? 'dates' : '', task.title),
    right: showDay(task.start),
    tick: true,
  }))

/** First and last day the tape is on the wall, in words. */
function tapeDays(view: ForHelper): string | false {
  const tasks = touchUpTasks(view)
  const on = tasks.find((task) => task.id === 'D2')
  const off = tasks.find((task) => task.id === 'D4')
  return on === undefined || off === undefined ? false : `${showDay(on.start)} to ${showDay(off.start)}`
}

function baySection(bay: NamedBay, view: ForHelper): readonly Section[] {
  const joints = view.joints.filter((joint) => joint.bay === bay.id)
  const first = joints[0]
  const last = joints[joints.length - 1]
  if (first === undefined || last === undefined) return []
  const picture = jointPicture(bay, joints, view)
  return [
    {
      turned: 'upright',
      title: `Joints · ${bay.name}`,
      under: `${first.number} to ${last.number} of ${view.joints.length} · seen from the room; the number stands where the joint is`,
      blocks: [
        ...(picture === undefined
          ? []
          : [{ kind: 'drawing' as const, drawing: picture, scale: largestScale(picture, PICTURE) }]),
        jointTable(joints, view),
      ],
    },
  ]
}

/** Paper for the picture above the rows, mm. */
const PICTURE = { width: 150, height: 105 } as const

function jointTable(joints: readonly HelperJoint[], view: ForHelper): Block {
  const passes = Math.max(1, ...joints.map((joint) => joint.passes))
  const passColumns = Array.from(
    { length: passes },
    (_, i): TableColumn => ({ head: i === 0 ? 'caulk 1' : String(i + 1), width: i === 0 ? 14 : 10 }),
  )
  const columns: readonly TableColumn[] = [
    { head: 'no.', width: 9, bold: true },
    { head: 'where', width: 50 - 5 * (passes - 1) },
    { head: 'long', width: 20 },
    { head: 'gap', width: 32 },
    { head: 'tape', width: 20 },
    { head: 'colour', width: 20 },
    ...passColumns,
    { head: 'tape off', width: 11 },
  ]
  return {
    kind: 'table',
    columns,
    rows: joints.map((joint) => ({ cells: jointCells(joint, passes, view), bar: held(joint) })),
  }
}

const held = (joint: HelperJoint): boolean => joint.waitsFor.length > 0

function jointCells(joint: HelperJoint, passes: number, { show }: ForHelper): readonly Cell[] {
  const open = joint.kind === 'open'
  const ticks = Array.from({ length: passes }, (_, i): Cell => (i < joint.passes ? TICK : '–'))
  return [
    String(joint.number),
    joint.where,
    held(joint) ? 'HOLD' : show.length(joint.length),
    open ? 'stays open' : gapWords(joint, show.length),
    joint.tape === 0 ? 'none' : show.length(joint.tape),
    open ? '–' : joint.colour,
    ...ticks,
    joint.tape === 0 ? '–' : TICK,
  ]
}

function gapWords(joint: HelperJoint, length: ForHelper['show']['length']): string {
  const [one, other] = joint.ends
  const rod = joint.kind === 'backed-caulk' ? ', over rod' : ''
  if (joint.gap1 === joint.gap2) return `${length(joint.gap1)}${rod}`
  return `${length(joint.gap1)} ${one}, ${length(joint.gap2)} ${other}${rod}`
}
