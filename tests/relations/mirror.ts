import { fitLeft, fitRight } from '../../src/job/chapters/cabinets.ts'
import { hearth, opening } from '../../src/job/chapters/firebox.ts'
import {
  bays,
  ceiling,
  flatEnds,
  floor,
  returns,
  squareLeft,
  squareRight,
  studs,
  type WidthRow,
  widths,
} from '../../src/job/chapters/wall.ts'
import { devices } from '../../src/job/chapters/wall-devices.ts'
import { answerOf, baysOf, type Job, withAnswer } from '../../src/job/job.ts'
import { type Field, NOT_MEASURED } from '../../src/things/field.ts'
import { type Length, less } from '../../src/units/length.ts'
import { widthOf } from '../outline/placed.ts'

/** The wall as a mirror shows it: bays in the other order, every left reading on the right. */
export function mirrored(job: Job): Job {
  const turned = baysOf(job).reduce<Job>((j, bay) => mirroredBay(j, job, bay.id), job)
  const list = answerOf(job, bays, 'job')
  return list === undefined || list === NOT_MEASURED ? turned : withAnswer(turned, bays, 'job', [...list].reverse())
}

function mirroredBay(onto: Job, job: Job, bay: string): Job {
  const width = widthOf(job, bay) as Length
  const away = (x: Length) => less(width, x)
  const turn = <T>(to: Job, field: Field<T>, over: (value: T) => T): Job => {
    const answer = answerOf(job, field, bay)
    return answer === undefined || answer === NOT_MEASURED ? to : withAnswer(to, field, bay, over(answer))
  }
  const swap = <T>(to: Job, left: Field<T>, right: Field<T>): Job =>
    withAnswer(withAnswer(to, left, bay, answerOf(job, right, bay)), right, bay, answerOf(job, left, bay))
  const back = <T>(list: readonly T[]): readonly T[] => [...list].reverse()
  const steps: readonly ((to: Job) => Job)[] = [
    (to) => turn(to, widths, (rows) => rows.map(turnedRow)),
    (to) => swap(to, squareLeft, squareRight),
    (to) => swap(to, fitLeft, fitRight),
    (to) => turn(to, returns, back),
    (to) => turn(to, ceiling, back),
    (to) => turn(to, floor, (rows) => back(rows.map((r) => ({ ...r, x: away(r.x) })))),
    (to) => turn(to, studs, (list) => back(list.map(away))),
    (to) => turn(to, flatEnds, (ends) => TURNED[ends] as typeof ends),
    (to) => turn(to, hearth, ([front, left, right]) => [front!, right!, left!]),
    (to) => turn(to, opening, ([x, z, w, h]) => [less(away(x!), w!), z!, w!, h!]),
    (to) =>
      turn(to, devices, (list) =>
        list.map((d) => ({
          ...d,
          wall: TURNED[d.wall] as typeof d.wall,
          x: d.wall === 'back' ? less(away(d.x), d.width) : d.x,
        })),
      ),
  ]
  return steps.reduce((to, step) => step(to), onto)
}

const TURNED: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  back: 'back',
  both: 'both',
  neither: 'neither',
}

const turnedRow = ({ left, right, ...rest }: WidthRow): WidthRow => ({
  ...rest,
  ...(right === undefined ? {} : { left: right }),
  ...(left === undefined ? {} : { right: left }),
})
