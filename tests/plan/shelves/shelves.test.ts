import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxKind } from '../../../src/job/chapters/cabinets.ts'
import {
  alignShelves,
  shelfCount,
  shelfDepth,
  shelfHeights,
  shelfLength,
  shelfLoad,
  shelfThickness,
} from '../../../src/job/chapters/shelves.ts'
import { ceiling, flatEnds, flatLength, returns, studs, wallKind, widths } from '../../../src/job/chapters/wall.ts'
import { devices } from '../../../src/job/chapters/wall-devices.ts'
import type { Job } from '../../../src/job/job.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import type { Shelf } from '../../../src/plan/shelves/shelves.ts'
import type { AlcoveWall } from '../../../src/plan/survey/survey.ts'
import { inches, type Length } from '../../../src/units/length.ts'
import { measuredJobs } from '../random-jobs.ts'
import { in_, type Put, wallOf } from '../run-for-test.ts'

const plan = (job: Job) => makePlan(job, 'quick')
const codes = (job: Job) => plan(job).messages.map((m) => m.code)
const find = (job: Job, code: string) => plan(job).messages.find((m) => m.code === code)
const applied = (put: Put, code: string, field: Parameters<Put['put']>[0], bays: readonly string[]): Job => {
  const fix = find(put.job, code)!.fixes[0]!
  return bays.reduce((p, bay) => {
    const answer = fix.answers.find((a) => a.key === `${bay}.${field.id}`)
    return answer === undefined ? p : p.put(field, bay, answer.value)
  }, put).job
}

const alcove = (put: Put, id: string, width = 40): Put =>
  put
    .put(widths, id, [{ height: in_(4), back: in_(width), front: in_(width) }])
    .put(returns, id, [in_(15), in_(15)])
    .put(ceiling, id, [in_(96), in_(96)])
    .put(wallKind, id, 'studs')
    .put(studs, id, [in_(8), in_(24)])
    .put(devices, id, [])
const one = alcove(wallOf('inch', ['alcove']), 'a')
const two = alcove(alcove(wallOf('inch', ['alcove', 'alcove']), 'a'), 'b')

/** Line between two surveyed points, in plain numbers: independent of the plan's own reading. */
function sideAt(wall: AlcoveWall, side: 'left' | 'right', z: number, y: number): number {
  const read = (edge: AlcoveWall['left']['back']) => {
    const above = edge.findIndex((k) => k.at >= z)
    if (above <= 0) return (above === 0 ? edge[0] : edge.at(-1))!.v
    const [a, b] = [edge[above - 1]!, edge[above]!]
    return a.v + ((b.v - a.v) * (z - a.at)) / (b.at - a.at)
  }
  const [back, front] = [read(wall[side].back), read(wall[side].front)]
  return back + ((front - back) * y) / wall.frontDepth
}

/** Least room between the board and the two returns while it is drawn out along the recess's middle, in nm. */
function leastRoom(wall: AlcoveWall, shelf: Shelf): number {
  const mouth = wall.depth ?? wall.frontDepth
  const lean = (shelf.offsetLeft + shelf.offsetRight) / 2
  const corners = [
    { y: 0, left: shelf.x, right: shelf.x + shelf.backLength },
    ...[shelf.x + shelf.backLength / 2 + lean].map((middle) => ({
      y: shelf.depth as number,
      left: middle - shelf.frontLength / 2,
      right: middle + shelf.frontLength / 2,
    })),
  ]
  const rooms = Array.from({ length: 41 }, (_, i) => (mouth * i) / 40).flatMap((out) =>
    corners
      .filter((c) => c.y + out <= mouth)
      .flatMap((c) => {
        const drift = (lean * out) / shelf.depth
        return [
          c.left + drift - sideAt(wall, 'left', shelf.z, c.y + out),
          sideAt(wall, 'right', shelf.z, c.y + out) - c.right - drift,
        ]
      }),
  )
  return Math.min(...rooms)
}

describe('a shelf in a crooked recess', () => {
  it('slid straight back never touches the walls', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => {
        const { survey, shelves } = plan(job)
        for (const shelf of shelves.shelves) {
          const wall = survey.walls.find((w) => w.bay.id === shelf.bay.id)!
          if (wall.kind !== 'alcove') continue
          expect(leastRoom(wall, shelf), `${shelf.id} at ${shelf.z}`).toBeGreaterThan(0)
        }
      }),
      { numRuns: 25 },
    )
  })

  it('suggests nothing it would stop: no stop for height or hollow without an answer to it', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => {
        const alcoves = new Set(
          plan(job)
            .survey.walls.filter((w) => w.kind === 'alcove')
            .map((w) => w.bay.id),
        )
        const own = plan(job).messages.filter((m) => alcoves.has(m.about.split('.')[0]!))
        expect(own.map((m) => m.code).filter((c) => ['S9', 'S10'].includes(c))).toEqual([])
      }),
      { numRuns: 10 },
    )
  })

  it('a mouth 1 in narrower needs a loose strip, 2 in narrower stops', () => {
    const mouth = (front: Length) =>
      one.put(widths, 'a', [{ height: in_(4), back: in_(40), front }]).put(shelfCount, 'a', 1).job
    expect(codes(mouth(in_(39)))).toContain('C6')
    expect(codes(mouth(in_(38)))).toContain('S11')
    expect(codes(mouth(in_(39, 3, 4)))).not.toContain('C6')
  })
})

describe('heights', () => {
  it('line up across the wall, though one ceiling is lower', () => {
    const job = two.put(ceiling, 'b', [in_(90), in_(88)]).job
    const z = (bay: string) =>
      plan(job)
        .shelves.shelves.filter((s) => s.bay.id === bay)
        .map((s) => s.z)
    expect(z('a')).toEqual(z('b'))
    expect(z('a').at(-1)).toBe(in_(78))
    expect(
      plan(two.put(alignShelves, 'job', false).put(ceiling, 'b', [in_(88)]).job).shelves.shelves.at(0)?.z,
    ).toBeDefined()
  })

  it('more than fit are refused with the count that fits', () => {
    const put = one.put(shelfCount, 'a', 9)
    const stop = find(put.job, 'S10')!
    expect(stop.values.most).toBe(stop.fixes[0]?.answers[0]?.value)
    expect(codes(applied(put, 'S10', shelfCount as never, ['a']))).not.toContain('S10')
  })

  it('typed heights too close are refused, and a wrong count of heights too', () => {
    const close = one.put(shelfCount, 'a', 2).put(shelfHeights, 'a', [in_(60), in_(64)]).job
    expect(codes(close)).toContain('S10')
    const missing = one.put(shelfCount, 'a', 2).put(shelfHeights, 'a', [in_(60)])
    expect(codes(missing.job)).toContain('S20')
    expect(codes(applied(missing, 'S20', shelfHeights as never, ['a']))).not.toContain('S20')
  })

  it('none are suggested over tall boxes', () => {
    expect(plan(one.put(boxKind, 'a', 'tall').job).shelves.shelves).toEqual([])
  })
})

describe('devices behind a shelf', () => {
  const outlet = {
    what: 'outlet',
    wall: 'back',
    x: in_(10),
    z: in_(58),
    width: in_(3),
    height: in_(5),
    fate: 'keep',
  } as const

  it('stops, and the offered height clears it in both aligned bays', () => {
    const put = two
      .put(shelfCount, 'a', 1)
      .put(shelfCount, 'b', 1)
      .put(shelfHeights, 'a', [in_(60)])
      .put(shelfHeights, 'b', [in_(60)])
      .put(devices, 'a', [outlet])
    expect(codes(put.job)).toContain('S8')
    const cleared = applied(put, 'S8', shelfHeights as never, ['a', 'b'])
    expect(codes(cleared)).not.toContain('S8')
    expect(new Set(plan(cleared).shelves.shelves.map((s) => s.z)).size).toBe(1)
  })

  it('a device that moves, or one beside the shelf, does not matter', () => {
    const at = one.put(shelfCount, 'a', 1).put(shelfHeights, 'a', [in_(60)])
    expect(codes(at.put(devices, 'a', [{ ...outlet, fate: 'move' }]).job)).not.toContain('S8')
    expect(codes(at.put(devices, 'a', [{ ...outlet, z: in_(70) }]).job)).not.toContain('S8')
  })
})

describe('what holds a shelf', () => {
  it('asks for blocking where the back cleat meets one stud only', () => {
    const job = one.put(shelfCount, 'a', 1).put(studs, 'a', [in_(8), in_(60)]).job
    expect(codes(job)).toContain('C5')
    expect(codes(one.put(shelfCount, 'a', 1).job)).not.toContain('C5')
  })

  it('a deep shelf with free ends pulls its screws out; the offered depth holds', () => {
    const put = wallOf('inch', ['flat'])
      .put(flatLength, 'a', in_(100))
      .put(flatEnds, 'a', 'neither')
      .put(ceiling, 'a', [in_(96)])
      .put(wallKind, 'a', 'studs')
      .put(studs, 'a', [in_(18), in_(34), in_(50), in_(66), in_(82)])
      .put(devices, 'a', [])
      .put(shelfLoad, 'job', 'books')
      .put(shelfCount, 'a', 1)
      .put(shelfLength, 'a', in_(60))
      .put(shelfThickness, 'a', in_(2, 1, 2))
      .put(shelfDepth, 'a', in_(15))
    expect(codes(put.job)).toContain('S13')
    expect(codes(applied(put, 'S13', shelfDepth as never, ['a']))).not.toContain('S13')
    const ends = plan(put.job).parts.find((p) => p.id === 'a/shelf-1/end')
    expect([ends?.quantity, ends?.roughLength]).toEqual([2, inches(14.5)])
  })

  it('waits for the studs: cleats on hold, skins not', () => {
    const put = one
      .put(shelfCount, 'a', 1)
      .put(shelfHeights, 'a', [in_(60)])
      .put(shelfThickness, 'a', in_(2))
      .put(studs, 'a', 'not measured' as never)
    const { parts } = plan(put.job)
    expect(parts.find((p) => p.id === 'a/shelf-1/cleat-back')?.waitsFor).toEqual(['a.studs'])
    expect(parts.find((p) => p.id === 'a/shelf-1/skin')?.waitsFor).toEqual([])
  })

  it('says the two set-backs when the returns differ', () => {
    const job = one.put(returns, 'a', [in_(15), in_(16)]).put(shelfCount, 'a', 1).job
    expect(find(job, 'N10')?.todo).toContain('1 1/2 in behind the right')
    expect(find(one.put(shelfCount, 'a', 1).job, 'N10')).toBeUndefined()
  })
})
