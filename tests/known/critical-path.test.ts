import { describe, expect, it } from 'vitest'
import { type Activity, criticalPath } from '../../src/plan/calendar/critical-path.ts'
import { schedule } from '../../src/plan/calendar/schedule.ts'
import { workTime } from '../../src/plan/calendar/working-days.ts'
import { day } from '../../src/units/day.ts'

/** `A 4`, `E 5 B C`: id, span, what it comes after. */
const network = (rows: string): readonly Activity[] =>
  rows
    .trim()
    .split('\n')
    .map((row) => row.trim().split(/\s+/))
    .map(([id, span, ...after]) => ({ id: id!, span: Number(span), after }))

interface Known {
  readonly name: string
  readonly source: string
  readonly network: readonly Activity[]
  readonly length: number
  readonly critical: string
  /** id, earliest start, earliest finish, latest start, latest finish; `-` = not printed. */
  readonly times: readonly (readonly [id: string, ...printed: readonly (number | '-')[]])[]
  readonly total: Readonly<Record<string, number>>
  readonly free?: Readonly<Record<string, number>>
}

const KNOWN: readonly Known[] = [
  {
    name: 'eight activities, four paths',
    source: 'lecture on network analysis, slideplayer.com/slide/3283910 (times printed; floats computed)',
    network: network('A 4\nB 3 A\nC 5 A\nD 2 A\nE 5 B C\nF 6 C D\nG 4 E F\nH 3 G'),
    length: 22,
    critical: 'A C F G H',
    times: [
      ['A', 0, 4, 0, 4],
      ['B', 4, 7, 7, 10],
      ['C', 4, 9, 4, 9],
      ['D', 4, 6, 7, 9],
      ['E', 9, 14, 10, 15],
      ['F', 9, 15, 9, 15],
      ['G', 15, 19, 15, 19],
      ['H', 19, 22, 19, 22],
    ],
    total: { A: 0, B: 3, C: 0, D: 3, E: 1, F: 0, G: 0, H: 0 },
    free: { A: 0, B: 2, C: 0, D: 3, E: 1, F: 0, G: 0, H: 0 },
  },
  {
    name: 'eleven activities',
    source:
      'lecture on network analysis, slideplayer.com/slide/3283910 (latest times printed; edges inferred from them; floats computed)',
    network: network('A 4\nB 6 A\nC 3 A\nD 6 B\nE 14 D\nF 5 C\nG 2 E F\nH 2 G\nI 3 G\nJ 4 H I\nK 2 J'),
    length: 41,
    critical: 'A B D E G I J K',
    times: [
      ['A', '-', '-', 0, 4],
      ['B', '-', '-', 4, 10],
      ['C', '-', '-', 22, 25],
      ['D', '-', '-', 10, 16],
      ['E', '-', '-', 16, 30],
      ['F', '-', '-', 25, 30],
      ['G', '-', '-', 30, 32],
      ['H', '-', '-', 33, 35],
      ['I', '-', '-', 32, 35],
      ['J', '-', '-', 35, 39],
      ['K', '-', '-', 39, 41],
    ],
    total: { A: 0, B: 0, C: 18, D: 0, E: 0, F: 18, G: 0, H: 1, I: 0, J: 0, K: 0 },
    free: { C: 0, F: 18, H: 1 },
  },
  {
    name: 'fractions of a week',
    source: 'homeworklib.com question 1445255 (all times and slacks printed; edges inferred so that every one holds)',
    network: network('A 2\nB 3.5\nC 1.5 A B\nD 4.5 A\nE 5.5 C\nF 0.5 D E\nG 7 F\nH 5.5 D E'),
    length: 18,
    critical: 'B C E F G',
    times: [
      ['A', 0, 2, 1.5, 3.5],
      ['B', 0, 3.5, 0, 3.5],
      ['C', 3.5, 5, 3.5, 5],
      ['D', 2, 6.5, 6, 10.5],
      ['E', 5, 10.5, 5, 10.5],
      ['F', 10.5, 11, 10.5, 11],
      ['G', 11, 18, 11, 18],
      ['H', 10.5, 16, 12.5, 18],
    ],
    total: { A: 1.5, B: 0, C: 0, D: 4, E: 0, F: 0, G: 0, H: 2 },
  },
]

describe.each(KNOWN)('$name ($source)', ({ network: activities, length, critical, times, total, free }) => {
  const floats = criticalPath(activities)

  it(`takes ${length} and runs over ${critical}`, () => {
    expect(Math.max(...[...floats.values()].map((f) => f.earliestFinish))).toBe(length)
    const zero = [...floats].filter(([, f]) => f.total === 0).map(([id]) => id)
    expect(zero.join(' ')).toBe(critical)
  })

  it.each(times.map(([id, ...printed]) => ({ id, printed })))('$id has its printed times', ({ id, printed }) => {
    const f = floats.get(id)!
    const found = [f.earliestStart, f.earliestFinish, f.latestStart, f.latestFinish]
    expect(found.filter((_, i) => printed[i] !== '-')).toEqual(printed.filter((p) => p !== '-'))
  })

  it('has its total and free floats', () => {
    for (const [id, float] of Object.entries(total)) expect(floats.get(id)!.total, id).toBe(float)
    for (const [id, float] of Object.entries(free ?? {})) expect(floats.get(id)!.free, id).toBe(float)
  })

  it('is never done sooner by one pair of hands, and takes the sum of the work without waits', () => {
    const time = workTime({ firstDay: day('2026-11-16'), opens: 0, minutesADay: 1440, lastWeekday: 7, daysOff: [] })
    const items = activities.map((a) => ({ ...a, minutes: a.span * 60, waitMinutes: 0, waitDays: 0 }))
    const end = Math.max(...schedule(items, time).map((t) => t.ends)) / 60
    expect(end).toBe(activities.reduce((sum, a) => sum + a.span, 0))
    expect(end).toBeGreaterThanOrEqual(length)
  })
})

it('refuses a network that names what does not stand before it', () => {
  expect(() => criticalPath(network('A 1 B\nB 1'))).toThrow('A comes after B')
})
