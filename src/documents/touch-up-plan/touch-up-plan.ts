import { largestScale, type PaperArea } from '../../geometry/scale.ts'
import type { NamedBay } from '../../things/place.ts'
import { showDay } from '../../units/day.ts'
import type { HelperJoint } from '../audience-fields.ts'
import { type Block, type Cell, fact, factOf, type Paper, type Section, type TableColumn, TICK } from '../block.ts'
import type { Assets, PacketDocument } from '../document.ts'
import { type ForHelper, forHelper } from '../for-helper.ts'
import { HOLD, isHeld } from '../held.ts'
import { paperSize, unitWord } from '../paper-size.ts'
import { words } from '../words/template.ts'
import { writePdf } from '../write/pdf.ts'
import { jointPicture } from './joint-picture.ts'
import { type JointRow, jointRows } from './joint-rows.ts'

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
    ...chipKitFacts(view),
    ...words('touch-up-how.md', assets.templates, {
      passes: String(view.passes),
      unit: unitWord(view.show.units),
      tapeDays: tapeDays(view),
    }),
  ],
})

/** What stays with the client, and what is written on it. */
const chipKitFacts = ({ chipKit }: ForHelper): readonly Block[] =>
  factOf(
    'chip kit',
    chipKit.flatMap(({ surface, product, colour, litres, from }, i) => [
      `${Math.round(litres * MILLILITRES)} ml of ${product}${colour === '' ? '' : `, ${colour}`} (${surface})${from === 'tin' ? '' : ', from the spray shop'}`,
      ...(i === chipKit.length - 1 ? ['On each jar: colour, sheen, product, date, and by what it was put on.'] : []),
    ]),
  )

const MILLILITRES = 1000

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
  const rows = jointRows(joints)
  return [
    {
      turned: 'upright',
      title: `Joints · ${bay.name}`,
      under: `${first.number} to ${last.number} of ${view.joints.length} · seen from the room, numbers where the joints are · tick 1, 2: passes of caulk; off: the tape`,
      blocks: [
        ...(picture === undefined
          ? []
          : [{ kind: 'drawing' as const, drawing: picture, scale: largestScale(picture, roomOver(rows.length)) }]),
        jointTable(rows, view),
      ],
    },
  ]
}

/** Paper for the picture, mm: what the rows leave of the page, within what is readable and what is not wasteful. */
const PICTURE = { width: 150, least: 70, most: 105, page: 216, row: 6.2 } as const
const roomOver = (rows: number): PaperArea => ({
  width: PICTURE.width,
  height: Math.min(PICTURE.most, Math.max(PICTURE.least, PICTURE.page - rows * PICTURE.row)),
})

/** A column of boxes to tick, mm. */
const TICKED = 8

function jointTable(rows: readonly JointRow[], view: ForHelper): Block {
  const passes = Math.max(1, ...rows.map(({ joint }) => joint.passes))
  const passColumns = Array.from({ length: passes }, (_, i): TableColumn => ({ head: String(i + 1), width: TICKED }))
  const columns: readonly TableColumn[] = [
    { head: 'no.', width: 17, bold: true },
    { head: 'where', width: 68 - TICKED * passes },
    { head: 'long', width: 20 },
    { head: 'gap', width: 29 },
    { head: 'tape', width: 20 },
    { head: 'colour', width: 16 },
    ...passColumns,
    { head: 'off', width: TICKED },
  ]
  return {
    kind: 'table',
    columns,
    rows: rows.map((row) => ({ cells: jointCells(row, passes, view), bar: isHeld(row.joint) })),
  }
}

function jointCells({ numbers, where, joint }: JointRow, passes: number, { show }: ForHelper): readonly Cell[] {
  const open = joint.kind === 'open'
  const size = isHeld(joint) ? () => HOLD : show.length
  const ticks = Array.from({ length: passes }, (_, i): Cell => (i < joint.passes ? TICK : '–'))
  return [
    numbers,
    where,
    size(joint.length),
    open ? 'stays open' : isHeld(joint) ? HOLD : gapWords(joint, show.length),
    joint.tape === 0 ? 'none' : size(joint.tape),
    open ? '–' : joint.colour,
    ...ticks,
    joint.tape === 0 ? '–' : TICK,
  ]
}

function gapWords(joint: HelperJoint, length: ForHelper['show']['length']): string {
  const [one, other] = joint.ends
  const rod = joint.rod === 0 ? '' : `, over ${length(joint.rod)} rod`
  if (joint.gap1 === joint.gap2) return `${length(joint.gap1)}${rod}`
  return `${length(joint.gap1)} ${one}, ${length(joint.gap2)} ${other}${rod}`
}
