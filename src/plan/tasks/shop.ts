import { CAUTIONS } from './cautions.ts'
import type { TaskDraft } from './draft.ts'
import { effort, type RateId } from './efforts.ts'
import { ORDERS } from './office.ts'
import { countOf, marksOf, sized, type Workload } from './workload.ts'

/** Sawing, gluing and drilling. */
export const shopTasks = (load: Workload): readonly TaskDraft[] => [
  sawing(load),
  boxMaking(load),
  leafMaking(load),
  drilling(load),
  gluing(load),
]

function sawing(load: Workload): TaskDraft {
  const { panels, parts } = load.built
  const made = parts.filter((p) => p.supply === 'made')
  const heaviest = Math.max(0, ...panels.layouts.map((l) => l.mass))
  const alone = load.context.figures.number('lift.alone')
  return {
    id: 'W1',
    title: 'Saw the sheets and sticks',
    after: [ORDERS.panels],
    needed: made.length > 0,
    efforts: [effort('sheet', panels.layouts.length), effort('part', countOf(made))],
    place: 'shop',
    work: 'cutting',
    marks: marksOf(made),
    tools: ['saw', 'caliper', 'tape', 'labels'],
    setOut: ['Trim the sheet, then saw in the printed order; write the mark before the next cut.'],
    checks: ['First piece of each setting measured by tape and by the mark beside it.', 'What stays long stays long.'],
    cautions: [
      CAUTIONS.saw,
      CAUTIONS.sawDust,
      ...(heaviest > alone
        ? [
            `Lifting: a sheet weighs ${load.show.mass(heaviest)}: two people or a lift aid, or first cut across on the stack.`,
          ]
        : []),
    ],
  }
}

function boxMaking(load: Workload): TaskDraft {
  const { boxes } = load.built.boxes
  return {
    id: 'W3',
    title: 'Put the boxes together',
    after: ['W1', ORDERS.hardware],
    needed: boxes.length > 0 && load.request('boxes') === undefined,
    efforts: [effort('box', boxes.length)],
    place: 'shop',
    work: 'boxes',
    wait: { clockHours: load.dry('clamp'), says: 'glue in clamps' },
    marks: boxes.map((b) => b.mark),
    tools: ['driver', 'clamps', 'square', 'pin gun', 'glue'],
    setOut: boxes.map((b) => `${b.mark}: ${lengths(load, b.width, b.height, b.depth)} outside.`),
    checks: ['Diagonals of each box equal before the back goes on.', 'Front edges flush.'],
    cautions: [],
  }
}

const lengths = (load: Workload, ...all: readonly Parameters<Workload['show']['length']>[0][]): string =>
  all.map((l) => load.show.length(l)).join(' × ')

const LEAF_RATES: Readonly<Record<string, RateId>> = { framed: 'leaf-framed', routed: 'leaf-routed', slab: 'leaf-slab' }

function leafMaking(load: Workload): TaskDraft {
  const { leaves, style } = load.built.fronts
  return {
    id: 'W4',
    title: 'Make the doors',
    after: ['W1'],
    needed: leaves.length > 0 && load.request('fronts') === undefined,
    efforts: [effort(LEAF_RATES[style] ?? 'leaf-framed', leaves.length)],
    place: 'shop',
    work: 'fronts',
    marks: leaves.map((l) => l.mark),
    tools: ['router or table saw', 'clamps', 'square', 'glue'],
    setOut: leaves.map((l) => `${l.mark}: ${lengths(load, l.width, l.height, l.thickness)}.`),
    checks: ['Each leaf flat on the bench and square by its diagonals.'],
    cautions: [CAUTIONS.saw, CAUTIONS.sawDust],
  }
}

function drilling(load: Workload): TaskDraft {
  const { leaves } = load.built.fronts
  return {
    id: 'W5',
    title: 'Drill hinge cups and handle holes',
    after: ['W4', ORDERS.hardware],
    needed: leaves.length > 0 && load.request('fronts') === undefined,
    efforts: [effort('drill', leaves.length)],
    place: 'shop',
    work: 'fronts',
    marks: leaves.map((l) => l.mark),
    tools: ['drill stand', 'cup drill', 'depth stop', 'scrap of the same thickness'],
    setOut: leaves.map(
      (l) =>
        `${l.mark}, hinges ${l.hingeSide}: cup centres ${load.show.length(l.cupFromEdge)} from that edge, at ${l.cups
          .map((c) => load.show.length(c))
          .join(', ')} from the lower end.`,
    ),
    checks: ['One cup in scrap first: the hinge sits flush and the drill point does not show on the face.'],
    cautions: [],
  }
}

function gluing(load: Workload): TaskDraft {
  const { shelves } = load.built.shelves
  const mantels = load.built.mantel.breasts.filter((b) => b.mantel !== undefined)
  const mantelParts = load.loose('E')
  return {
    id: 'W6',
    title: gluingTitle(mantels.length, shelves.length),
    after: ['W1', ORDERS.hardware],
    needed: mantels.length + shelves.length > 0,
    efforts: [effort('mantel-glue', mantels.length), effort('shelf-glue', shelves.length)],
    place: 'shop',
    work: 'gluing',
    wait: { clockHours: load.dry('glue'), says: 'glue, overnight' },
    marks: [...marksOf(mantelParts), ...shelves.map((s) => s.mark)],
    tools: ['clamps', 'cauls', 'glue', 'pin gun', 'a flat bench'],
    setOut: mantelParts.map((p) => `${sized(p, load.show)}.`),
    checks: [
      'Each shelf slides over a piece of its cleat before the glue is hard.',
      'No twist: sight along both front edges.',
    ],
    cautions: [],
  }
}

function gluingTitle(mantels: number, shelves: number): string {
  if (mantels === 0) return 'Glue up the shelves'
  return shelves === 0 ? 'Glue up the mantel' : 'Glue up the mantel and shelves'
}
