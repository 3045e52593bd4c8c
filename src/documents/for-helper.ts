import { siteNote } from '../job/chapters/install.ts'
import { siteAddress } from '../job/chapters/job.ts'
import type { CoatingPlan } from '../plan/coating/coating.ts'
import type { Breast } from '../plan/mantel/mantel.ts'
import type { Plan } from '../plan/plan.ts'
import type { Wall } from '../plan/survey/survey.ts'
import type { ChapterId } from '../things/field.ts'
import type { NamedBay } from '../things/place.ts'
import type { Day } from '../units/day.ts'
import { ZERO } from '../units/length.ts'
import { type Assumed, assumedOf } from './assumed.ts'
import {
  HELPER_BOX,
  HELPER_BREAST,
  HELPER_DRAWER,
  HELPER_JOINT,
  HELPER_LAYOUT,
  HELPER_LEAF,
  HELPER_PART,
  HELPER_SHELF,
  HELPER_STICK,
  HELPER_TASK,
  HELPER_WALL,
  type HelperBox,
  type HelperDrawer,
  type HelperJoint,
  type HelperLayout,
  type HelperLeaf,
  type HelperPart,
  type HelperShelf,
  type HelperStickPlan,
  type HelperTask,
  type HelperWall,
} from './audience-fields.ts'
import { type Accepted, acceptedConfirms } from './confirms.ts'
import { type Dangers, dangersOf } from './dangers.ts'
import { withoutHeldSizes } from './install-sequence/held-lines.ts'
import { type PlainShow, plainShow, textAnswer, titleOf } from './job-words.ts'
import { type MaterialNames, materialNames } from './material-names.ts'
import { type Noted, notesOf } from './notes.ts'
import { only } from './only.ts'
import { type OrderDay, orderDays } from './order-days.ts'
import { helperFigureLines, type OwnFigureLine } from './own-figures.ts'
import { type ChangesSince, partChanges } from './part-changes.ts'
import { type Waiting, waitingFor } from './waiting.ts'

/** All that a helper's papers are made from. Of the client: the site's address. Of money: nothing. */
export interface ForHelper {
  readonly title: string
  readonly siteAddress: string | undefined
  readonly siteNote: string | undefined
  readonly show: PlainShow
  readonly bays: readonly NamedBay[]
  readonly parts: readonly HelperPart[]
  readonly materials: MaterialNames
  readonly layouts: readonly HelperLayout[]
  readonly sticks: readonly HelperStickPlan[]
  readonly walls: readonly HelperWall[]
  readonly boxes: readonly HelperBox[]
  readonly leaves: readonly HelperLeaf[]
  readonly drawers: readonly HelperDrawer[]
  readonly shelves: readonly HelperShelf[]
  readonly breasts: readonly Pick<Breast, (typeof HELPER_BREAST)[number]>[]
  readonly joints: readonly HelperJoint[]
  readonly passes: number
  readonly tasks: readonly HelperTask[]
  readonly twoPeople: ReadonlyMap<string, string>
  readonly colours: { readonly builtIn: string; readonly wall: string }
  readonly chipKit: CoatingPlan['chipKit']
  readonly dangers: Dangers
  readonly waiting: readonly Waiting[]
  readonly orders: readonly OrderDay[]
  readonly notes: readonly Noted[]
  /** Values assumed where nobody measured. */
  readonly assumed: readonly Assumed[]
  readonly accepted: readonly Accepted[]
  /** Figures of the shop's own that this job reckons with instead of the published ones. */
  readonly ownFigures: readonly OwnFigureLine[]
  /** For each packet handed out before: which parts are not what they were then. */
  readonly changes: readonly ChangesSince[]
  readonly finish: Day
}

/** Chapters whose messages a helper may read: none of money or of buying. */
const HELPER_CHAPTERS: readonly ChapterId[] = [
  'wall',
  'firebox',
  'cabinets',
  'shelves',
  'mantel',
  'finish',
  'hardware',
  'install',
  'job',
]

/** The helper's share of a plan. */
export function forHelper(plan: Plan): ForHelper {
  const seen = { bays: plan.bays, parts: plan.parts.map(helperPart), ...wallShare(plan) }
  return {
    ...seen,
    title: titleOf(plan),
    siteAddress: textAnswer(plan, siteAddress),
    siteNote: textAnswer(plan, siteNote),
    show: plainShow(plan.show),
    materials: materialNames(plan),
    layouts: plan.panels.layouts.map((layout) => ({
      ...only(layout, HELPER_LAYOUT),
      laid: layout.laid.map((laid) => ({ ...laid, part: helperPart(laid.part) })),
    })),
    sticks: plan.panels.sticks.map((stick) => ({
      ...only(stick, HELPER_STICK),
      bars: stick.bars.map(({ pieces, left }) => ({
        left,
        pieces: pieces.map(({ part, length }) => ({ part: helperPart(part), length })),
      })),
    })),
    joints: plan.joints.joints.map((joint) => only(joint, HELPER_JOINT)),
    passes: plan.joints.passes,
    tasks: plan.calendar.tasks.map((task) => withoutHeldSizes(only(task, HELPER_TASK), seen)),
    twoPeople: plan.fixings.twoPeople,
    colours: { builtIn: plan.coating.colours['built-in'], wall: plan.coating.colours.wall },
    chipKit: plan.coating.chipKit,
    dangers: dangersOf(plan),
    waiting: waitingFor(plan),
    orders: orderDays(plan),
    notes: notesOf(plan, HELPER_CHAPTERS),
    assumed: assumedOf(plan, HELPER_CHAPTERS),
    accepted: acceptedConfirms(plan, HELPER_CHAPTERS),
    ownFigures: helperFigureLines(plan),
    changes: plan.job.issued.map((issue) => ({ revision: issue.revision, parts: partChanges(issue, plan) })),
    finish: plan.calendar.finish,
  }
}

/** What is drawn of the wall. */
const wallShare = (plan: Plan) => ({
  walls: plan.survey.walls.map((wall) => helperWall(wall, plan)),
  boxes: plan.boxes.boxes.map((box): HelperBox => only(box, HELPER_BOX)),
  leaves: plan.fronts.leaves.map((leaf): HelperLeaf => only(leaf, HELPER_LEAF)),
  drawers: plan.fronts.drawers.map((drawer): HelperDrawer => only(drawer, HELPER_DRAWER)),
  shelves: plan.shelves.shelves.map((shelf): HelperShelf => only(shelf, HELPER_SHELF)),
  breasts: plan.mantel.breasts.map((breast) => only(breast, HELPER_BREAST)),
})

const helperWall = (wall: Wall, { slots }: Plan): HelperWall => ({
  ...only(wall, HELPER_WALL),
  crown: slots.levels.crownKept ? wall.crown.drop : ZERO,
  baseboard: wall.kind !== 'breast' && slots.levels.baseboardKept ? wall.baseboard.height : ZERO,
})

const helperPart = (part: Plan['parts'][number]): HelperPart => only(part, HELPER_PART)
