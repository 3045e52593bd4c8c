import type { Task } from '../../things/task.ts'
import type { Effort } from './efforts.ts'

/** A row of the task table before it is known whether it is needed. What it does not name is empty. */
export interface TaskDraft {
  readonly id: string
  readonly title: string
  readonly after: readonly string[]
  /** False drops the task; what waits for it then waits for what it waited for. */
  readonly needed: boolean
  /** What there is to do, by hour rate; nothing for what others do. */
  readonly efforts?: readonly Effort[]
  /** Hours worked out elsewhere, by name. */
  readonly promised?: Readonly<Record<string, number>>
  /** Pieces without a mark that two people lift, one sentence each. */
  readonly lifts?: readonly string[]
  readonly place: Task['place']
  readonly work: WorkKind
  readonly wait?: Partial<Task['wait']>
  readonly marks?: readonly string[]
  readonly tools?: readonly string[]
  readonly setOut?: readonly string[]
  readonly checks?: readonly string[]
  readonly cautions?: readonly string[]
}

/** Kinds of work that are priced, and corrected by closed jobs, on their own. In the order the costing prints them. */
export const WORK_KINDS = {
  office: 'Office, ordering and survey',
  cutting: 'Sawing',
  boxes: 'Boxes',
  fronts: 'Doors',
  gluing: 'Mantel and shelves, in the shop',
  paint: 'Painting',
  house: 'Protection, strip-out and repair',
  boxFitting: 'Fitting boxes, counters and plinths',
  mantelFitting: 'Fitting the mantel',
  shelfFitting: 'Fitting shelves',
  joints: 'Taping, caulking and touch-up',
  hanging: 'Doors hung, inside fitted',
  handOver: 'Hand-over and snag visit',
} as const
export type WorkKind = keyof typeof WORK_KINDS

/** Holds the place of a task that has nothing to do, so that what waits for it is passed on. */
export const absent = (id: string, after: readonly string[]): TaskDraft => ({
  id,
  title: '',
  after,
  needed: false,
  place: 'shop',
  work: 'paint',
})

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
