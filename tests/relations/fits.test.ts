import { expect } from 'vitest'
import { baysOf, type Job } from '../../src/job/job.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { boxFaults } from '../outline/box-fit.ts'
import { counterFaults } from '../outline/counter-fit.ts'
import { cutOutFaults } from '../outline/cut-out-fit.ts'
import { leafFaults } from '../outline/front-fit.ts'
import { overlapFaults } from '../outline/overlaps.ts'
import { stopped } from '../outline/placed.ts'
import { cleatFaults, shelfFaults } from '../outline/shelf-fit.ts'
import { fillerFaults, kickFaults } from '../outline/strip-fit.ts'
import { jobsWithEverything } from '../plan/hold-jobs.ts'
import { variedJobs } from '../plan/varied-jobs.ts'
import { type Relation, relations, VACUOUS } from './holds.ts'

const SIXTEENTH = 1_587_500
type Faults = (job: Job, plan: Plan, bay: string, step: number) => readonly string[]

/** Parts put back where they were measured for: a bay without a stop has nothing that does not fit. */
const fits =
  (faults: Faults): Relation =>
  (job, plan) => {
    const open = baysOf(job).filter((b) => b.kind !== 'breast' && !stopped(plan, b.id))
    expect(open.flatMap((b) => faults(job, plan, b.id, SIXTEENTH))).toEqual([])
    return open.length === 0 ? VACUOUS : undefined
  }

relations('parts put back in the surveyed outline', variedJobs, {
  'every box stands between the returns at every height, passes the mouth, and is stood up under the ceiling':
    fits(boxFaults),
  'every shelf is pushed in without a turn, is clear where it is seated, and leaves the gaps its joints name':
    fits(shelfFaults),
  'every counter goes in straight or tipped, and leaves the gaps its joints name': fits(counterFaults),
  'leaves stay on their boxes and off one another': fits((_, plan, bay) => leafFaults(plan, bay)),
  'cleats lie in the void of their shelf with slip to spare, behind the front edge, clear of one another':
    fits(cleatFaults),
  'fillers are cut wide enough for the widest gap and finish as wide as it': fits(fillerFaults),
  'kick plates reach from wall to wall and to the lowest floor, and stand in neither when finished': fits(kickFaults),
  'no fixed piece stands in another': fits(overlapFaults),
})

relations(
  'outlets put back on the wall',
  jobsWithEverything,
  {
    'every device behind a box lies in an opening, and no opening breaks the edge of its panel': fits(cutOutFaults),
  },
  0.8,
)
