import fc from 'fast-check'
import { boxKind } from '../../src/job/chapters/cabinets.ts'
import { studs, wallKind } from '../../src/job/chapters/wall.ts'
import { type DeviceRow, devices } from '../../src/job/chapters/wall-devices.ts'
import { baysOf, type Job, withAnswer } from '../../src/job/job.ts'
import { inches } from '../../src/units/length.ts'
import { measuredJobs } from './random-jobs.ts'

const outlet: fc.Arbitrary<DeviceRow> = fc
  .record({
    wall: fc.constantFrom('back', 'left', 'right'),
    x: fc.integer({ min: 2, max: 40 }),
    z: fc.integer({ min: 8, max: 70 }),
  })
  .map(({ wall, x, z }) => ({
    what: 'outlet',
    wall: wall as 'back',
    x: inches(x),
    z: inches(z),
    width: inches(3),
    height: inches(5),
    fate: 'keep',
  }))

const runAnswers = fc.record({
  kind: fc.constantFrom('base', 'base', 'tall', 'none'),
  wall: fc.constantFrom('studs', 'masonry', 'hollow'),
  stud: fc.integer({ min: 4, max: 20 }),
  devices: fc.array(outlet, { maxLength: 2 }),
})

/** Measured jobs where boxes may be tall or none, walls of any kind, with outlets at the back and on the returns. */
export const jobsWithEverything: fc.Arbitrary<Job> = fc
  .tuple(measuredJobs, fc.array(runAnswers, { minLength: 4, maxLength: 4 }))
  .map(([job, answers]) =>
    baysOf(job).reduce<Job>((j, bay, i) => {
      const own = answers[i]
      if (bay.kind === 'breast' || own === undefined) return j
      const steps: readonly ((to: Job) => Job)[] = [
        (to) => withAnswer(to, boxKind, bay.id, own.kind as 'base'),
        (to) => withAnswer(to, wallKind, bay.id, own.wall as 'studs'),
        (to) => (own.wall === 'studs' ? withAnswer(to, studs, bay.id, [inches(own.stud), inches(own.stud + 16)]) : to),
        (to) => withAnswer(to, devices, bay.id, own.devices),
      ]
      return steps.reduce((to, step) => step(to), j)
    }, job),
  )
