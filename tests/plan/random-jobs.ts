import fc from 'fast-check'
import { fuel, hearth, opening, realMasonry, tv } from '../../src/job/chapters/firebox.ts'
import { units } from '../../src/job/chapters/job.ts'
import {
  baseboard,
  bays,
  bow,
  breastSize,
  ceiling,
  crown,
  flatEnds,
  flatLength,
  floor,
  returns,
  squareLeft,
  squareRight,
  studs,
  type WidthRow,
  wallKind,
  widths,
} from '../../src/job/chapters/wall.ts'
import { devices } from '../../src/job/chapters/wall-devices.ts'
import { emptyJob, type Job, withAnswer } from '../../src/job/job.ts'
import type { Field } from '../../src/things/field.ts'
import type { BayKind, Place } from '../../src/things/place.ts'
import { inches, type Length, sum, ZERO } from '../../src/units/length.ts'

/** Sixteenths of an inch as a length. */
const sixteenths = (n: number): Length => inches(0, n, 16)
const within = (least: number, most: number) => fc.integer({ min: least * 16, max: most * 16 }).map(sixteenths)
const small = (most: number) => fc.integer({ min: 0, max: most }).map(sixteenths)
const signedSmall = (most: number) => fc.integer({ min: -most, max: most }).map(sixteenths)

const put =
  <T>(field: Field<T>, place: Place, value: T) =>
  (job: Job): Job =>
    withAnswer(job, field, place, value)
type Step = (job: Job) => Job

/** What of an alcove's outline was measured, and how: leans of one side or none, squares, the front or not. */
const readings = fc.record({
  lean: fc.constantFrom('left', 'left', 'right', 'neither'),
  front: fc.constantFrom('every height', 'every height', 'not at 38', 'nowhere'),
  squareLeft: fc.option(signedSmall(8), { nil: undefined, freq: 2 }),
  squareRight: fc.option(signedSmall(8), { nil: undefined, freq: 4 }),
  /** A ledge at 60 in: widths jump there. */
  ledge: fc.option(signedSmall(12), { nil: undefined, freq: 3 }),
  goesOn: fc.constantFrom('neither', 'neither', 'neither', 'left', 'right'),
  bow: fc.option(fc.tuple(small(6), small(6)), { nil: undefined, freq: 2 }),
  crown: fc.option(fc.tuple(within(2, 5), within(1, 3)), { nil: undefined, freq: 3 }),
})

/** A crooked alcove: widths at three heights or more, back and front, lean, returns, ceiling, floor, baseboard, studs. */
const alcove = (id: string): fc.Arbitrary<readonly Step[]> =>
  fc
    .record({
      base: within(20, 70),
      dw: fc.array(signedSmall(8), { minLength: 6, maxLength: 6 }),
      lean: fc.array(signedSmall(6), { minLength: 2, maxLength: 2 }),
      returns: fc.tuple(within(12, 24), small(8)),
      ceiling: within(90, 110),
      drop: small(10),
      board: within(3, 6),
      masonry: fc.boolean(),
      how: readings,
    })
    .map((r) => {
      const { how } = r
      const at = (i: number, more = sixteenths(0)) => sum(r.base, r.dw[i] ?? sixteenths(0), more)
      const row = (height: Length, i: number, lean: Length, more?: Length): WidthRow => ({
        height,
        back: at(i, more),
        ...(how.front === 'nowhere' || (how.front === 'not at 38' && i === 2) ? {} : { front: at(i + 1, more) }),
        ...(how.lean === 'neither' ? {} : { [how.lean]: lean }),
      })
      const ledge =
        how.ledge === undefined
          ? []
          : [row(inches(60), 2, r.lean[0]!), row(inches(60, 1, 16), 4, r.lean[1]!, how.ledge)]
      const deep = [r.returns[0], sum(r.returns[0], r.returns[1])] as const
      const optional: readonly Step[] = [
        ...(how.squareLeft === undefined ? [] : [put(squareLeft, id, how.squareLeft)]),
        ...(how.squareRight === undefined ? [] : [put(squareRight, id, how.squareRight)]),
        ...(how.bow === undefined ? [] : [put(bow, id, how.bow)]),
        ...(how.crown === undefined ? [] : [put(crown, id, how.crown)]),
      ]
      return [
        ...optional,
        put(widths, id, [
          row(inches(4), 0, sixteenths(0)),
          row(inches(38), 2, r.lean[0]!),
          ...ledge,
          row(inches(84), 4, r.lean[1]!, how.ledge),
        ]),
        put(returns, id, [how.goesOn === 'left' ? ZERO : deep[0], how.goesOn === 'right' ? ZERO : deep[1]]),
        put(ceiling, id, [r.ceiling, r.ceiling]),
        put(floor, id, [
          { x: inches(0), drop: inches(0) },
          { x: r.base, drop: r.drop },
        ]),
        put(baseboard, id, [r.board, sixteenths(9)]),
        put(wallKind, id, r.masonry ? 'masonry' : 'studs'),
        put(studs, id, [inches(4), inches(20)]),
        put(devices, id, []),
      ]
    })

const breast = (id: string): fc.Arbitrary<readonly Step[]> =>
  fc
    .record({ width: within(48, 80), out: within(12, 24) })
    .map((r) => [
      put(breastSize, id, [r.width, r.out]),
      put(ceiling, id, [inches(96)]),
      put(fuel, id, 'open-fire'),
      put(opening, id, [inches(10), inches(0), inches(28), inches(27)]),
      put(realMasonry, id, true),
      put(hearth, id, [inches(20), inches(12), inches(12)]),
      put(tv, id, false),
    ])

const flat = (id: string): fc.Arbitrary<readonly Step[]> =>
  fc.record({ length: within(40, 160), ends: fc.constantFrom('neither', 'left', 'right', 'both') }).map((r) => [
    put(flatLength, id, r.length),
    put(flatEnds, id, r.ends as 'neither'),
    put(ceiling, id, [inches(96)]),
    put(floor, id, [
      { x: inches(0), drop: inches(0) },
      { x: r.length, drop: sixteenths(4) },
    ]),
    put(baseboard, id, [inches(4), sixteenths(9)]),
    put(wallKind, id, 'masonry'),
    put(devices, id, []),
  ])

const BUILDERS: Readonly<Record<BayKind, (id: string) => fc.Arbitrary<readonly Step[]>>> = { alcove, breast, flat }

/** Any left-to-right mix of one to four bays, fully measured, in inches or millimetres; choices left to suggestions. */
export const measuredJobs: fc.Arbitrary<Job> = fc
  .tuple(
    fc.array(fc.constantFrom<BayKind>('alcove', 'breast', 'flat'), { minLength: 1, maxLength: 4 }),
    fc.constantFrom('inch', 'metric'),
  )
  .chain(([kinds, system]) => {
    const list = kinds.map((kind, i) => ({ id: String.fromCharCode(97 + i), kind }))
    return fc.tuple(...list.map((b) => BUILDERS[b.kind](b.id))).map((steps) => {
      const start = [put(units, 'job', system as 'inch'), put(bays, 'job', list), ...steps.flat()]
      return start.reduce<Job>((job, step) => step(job), emptyJob('random-job', '2026-11-25'))
    })
  })
