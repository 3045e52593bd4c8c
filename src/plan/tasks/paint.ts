import { CAUTIONS } from './cautions.ts'
import { coatSteps } from './coat-steps.ts'
import { absent, capital, type TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import { ORDERS, REQUESTS } from './office.ts'
import { marksOf, type Workload } from './workload.ts'

/** Sealer, primer and top coats of the built-ins, one task a coat, or the way to the spray shop and back; then wrapping. */
export const paintTasks = (load: Workload): readonly TaskDraft[] => [
  ...priming(load),
  ...topCoats(load),
  wrapping(load),
]

const painted = (load: Workload) => marksOf(load.built.parts.filter((p) => p.coat !== undefined && p.coat.faces > 0))

function priming(load: Workload): readonly TaskDraft[] {
  const steps = coatSteps(load.built.coating, 'built-in', ['sealer', 'primer'])
  const place = load.built.coating.where === 'site' ? 'site' : 'shop'
  const first = [
    'W5',
    'W6',
    'W3',
    REQUESTS.fronts,
    REQUESTS.boxes,
    ORDERS.coatings,
    ...(place === 'site' ? ['B1'] : []),
  ]
  if (steps.length === 0) return [absent('W7', first)]
  return steps.map(({ line, area, says, sandAfter }, i) => ({
    id: `W7.${i + 1}`,
    title: capital(i === 0 ? `sand every edge, then ${says}` : says),
    after: i === 0 ? first : [`W7.${i}`],
    needed: true,
    efforts: [effort('prime', area)],
    place,
    work: 'paint',
    wait: drying(line),
    marks: painted(load),
    tools: ['sander and 240 paper', 'roller or gun', 'trestles', 'tack cloth'],
    setOut: i === 0 ? ['Edges and routed profiles first: raw edges drink.'] : [],
    checks: sandAfter ? ['Dry, then sanded smooth before the next coat: no fibres stand.'] : [],
    cautions: [CAUTIONS.sandDust],
  }))
}

const drying = (line: { readonly recoatHoursLeast: number; readonly recoatHoursMost: number | null }) => ({
  clockHours: line.recoatHoursLeast,
  says: `dry ${line.recoatHoursLeast} h before the next coat`,
  ...(line.recoatHoursMost === null ? {} : { mostClockHours: line.recoatHoursMost }),
})

function topCoats(load: Workload): readonly TaskDraft[] {
  if (load.request('spraying') !== undefined) return [sprayShop(load)]
  const { coating } = load.built
  const steps = coatSteps(coating, 'built-in', ['top'])
  if (steps.length === 0) return [absent('W8', ['W7'])]
  const cure = load.dry('cure')
  return steps.map(({ line, area, says, sandAfter }, i) => {
    const last = i === steps.length - 1
    return {
      id: `W8.${i + 1}`,
      title: capital(says),
      after: [i === 0 ? 'W7' : `W8.${i}`],
      needed: true,
      efforts: [effort(coating.method === 'hand' ? 'brush' : 'spray', area)],
      place: coating.where === 'site' ? 'site' : 'shop',
      work: 'paint',
      wait: last
        ? { clockHours: Math.max(cure, line.recoatHoursLeast), says: `${cure} h before it is wrapped` }
        : drying(line),
      marks: painted(load),
      tools:
        coating.method === 'hand' ? ['brush', 'fine roller', 'trestles'] : ['gun and compressor', 'trestles', 'mask'],
      setOut: ['Both faces of every leaf: hidden face first.'],
      checks:
        sandAfter && !last ? ['Dry, then sanded lightly before the next coat.'] : ['No runs by a lamp held flat.'],
      cautions: coating.method === 'hand' ? ['Air the room; gloves.'] : [CAUTIONS.spray],
    }
  })
}

function sprayShop(load: Workload): TaskDraft {
  const request = load.request('spraying')
  const days = request?.leadDays ?? 0
  return {
    id: 'W8',
    title: 'Take the work to the spray shop; fetch it',
    after: ['W7', REQUESTS.spraying],
    needed: true,
    efforts: [effort('carry-spray', 1)],
    place: 'away',
    work: 'paint',
    wait: { workingDays: days, clockHours: load.dry('cure'), says: `at the spray shop ${days} working days` },
    marks: [...new Set((request?.lines ?? []).map((l) => l.mark))],
    tools: ['blankets', 'straps', 'the request, signed'],
    checks: ['Every edge sanded smooth before it leaves.', 'Counted out and counted in against the request.'],
    cautions: [],
  }
}

const wrapping = (load: Workload): TaskDraft => ({
  id: 'W9',
  title: 'Check what came in, wrap, list the load',
  after: ['W8', 'W3', REQUESTS.boxes, REQUESTS.fronts],
  needed: load.built.parts.length > 0,
  efforts: [effort('wrap', 1)],
  promised: { 'own-hours': checkingHours(load) },
  place: 'shop',
  work: 'paint',
  marks: marksOf(load.built.parts),
  tools: ['paper', 'blankets', 'the mark written on each wrapping'],
  checks: ['Every mark of the cut list and the requests ticked.'],
  cautions: [],
})

/** Own hours to fetch and check what shops made; the way to the spray shop has its own task. */
const checkingHours = (load: Workload): number =>
  load.built.supply.requests.filter((r) => r.id !== 'spraying').reduce((sum, r) => sum + r.ownHours, 0)
