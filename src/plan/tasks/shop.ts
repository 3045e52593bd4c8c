import { FRONTS } from '../../kinds/front/list.ts'
import { sum } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import { NAILER_NOTCH } from '../boxes/inside-parts.ts'
import { checkWords } from '../fronts/door-choices.ts'
import { CAUTIONS } from './cautions.ts'
import type { TaskDraft } from './draft.ts'
import { edgeBanding } from './edge-band.ts'
import { effort } from './efforts.ts'
import { lightGrooves } from './lights.ts'
import { ORDERS } from './office.ts'
import { countOf, legCount, marksOf, sized, type Workload } from './workload.ts'

/** Sawing, gluing and drilling. */
export const shopTasks = (load: Workload): readonly TaskDraft[] => [
  sawing(load),
  edgeBanding(load),
  lightGrooves(load),
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
  const boxes =
    load.request('boxes') === undefined
      ? load.built.boxes.boxes.filter((b) => !load.built.carryingIn.builtInRoom.has(b.mark))
      : []
  const { drawers, drawerMake } = load.built.fronts
  return {
    id: 'W3',
    title: boxTitle(boxes.length, drawers.length),
    after: ['W1', 'W2', 'W10', ORDERS.hardware],
    needed: boxes.length + drawers.length > 0,
    efforts: [effort('box', boxes.length), effort('drawer', drawers.length)],
    place: 'shop',
    work: 'boxes',
    wait: { clockHours: load.dry('clamp'), says: 'glue in clamps' },
    marks: [...boxes, ...drawers].map((b) => b.mark),
    tools: ['driver', 'clamps', 'square', 'pin gun', 'glue'],
    setOut: [
      ...boxes.map((b) => `${b.mark}: ${lengths(load, b.width, b.height, b.depth)} outside.`),
      ...drawers.map(
        ({ mark, box, body }) =>
          `${mark}: drawer box ${lengths(load, body.width, body.height, body.length)} outside; its slides in ${box.mark}, screw line ${load.show.withUnit(body.slideLine)} above its lower edge.`,
      ),
      ...notches(load, boxes),
      ...(drawers.length > 0 && drawerMake?.known === 'generic'
        ? [`Screw lines of the slides and the drawer boxes’ widths${checkWords('generic', 'slide')}.`]
        : []),
    ],
    checks: [
      ...(boxes.length === 0 ? [] : ['Diagonals of each box equal before the back goes on.', 'Front edges flush.']),
      ...(drawers.length === 0 ? [] : ['Diagonals of each drawer box equal; it runs without a rub from end to end.']),
    ],
    cautions: [],
  }
}

/** Uprights are notched round the nailers before they go in. */
const notches = ({ built, show }: Workload, boxes: readonly Box[]): readonly string[] =>
  built.parts
    .filter((part) => boxes.some((box) => part.id.startsWith(`${box.id}/`)))
    .flatMap((part) =>
      part.cutOuts
        .filter((cut) => cut.what.startsWith(NAILER_NOTCH))
        .map(
          (cut) =>
            `${part.mark}, ${cut.what}, sawn first: ${show.length(cut.width)} deep, from ${show.length(cut.z)} to ${show.length(sum(cut.z, cut.height))} up.`,
        ),
    )

function boxTitle(boxes: number, drawers: number): string {
  if (drawers === 0) return 'Put the boxes together'
  return boxes === 0 ? 'Put the drawer boxes together, slides in' : 'Put the boxes and drawer boxes together, slides in'
}

const lengths = (load: Workload, ...all: readonly Parameters<Workload['show']['length']>[0][]): string =>
  all.map((l) => load.show.length(l)).join(' × ')

function leafMaking(load: Workload): TaskDraft {
  const { leaves, drawers, style } = load.built.fronts
  const fronts = [...leaves, ...drawers]
  return {
    id: 'W4',
    title: leafTitle('Make', leaves.length, drawers.length),
    after: ['W1'],
    needed: fronts.length > 0 && load.request('fronts') === undefined,
    // A drawer front counts as a slab leaf, whatever the doors are.
    efforts: [
      effort(style === 'none' ? 'leaf-slab' : FRONTS[style].rate, leaves.length),
      effort('leaf-slab', drawers.length),
    ],
    place: 'shop',
    work: 'fronts',
    marks: fronts.map((l) => l.mark),
    tools: ['router or table saw', 'clamps', 'square', 'glue'],
    setOut: fronts.map((l) => `${l.mark}: ${lengths(load, l.width, l.height, l.thickness)}.`),
    checks: ['Each leaf flat on the bench and square by its diagonals.'],
    cautions: [CAUTIONS.saw, CAUTIONS.sawDust],
  }
}

const leafTitle = (verb: string, leaves: number, drawers: number): string =>
  `${verb} the ${[...(leaves > 0 ? ['doors'] : []), ...(drawers > 0 ? ['drawer fronts'] : [])].join(' and ') || 'doors'}`

function drilling(load: Workload): TaskDraft {
  const { leaves, drawers } = load.built.fronts
  const { show } = load
  return {
    id: 'W5',
    title: leaves.length > 0 ? 'Drill hinge cups and handle holes' : 'Drill handle holes',
    after: ['W4', ORDERS.hardware],
    needed: leaves.length + drawers.length > 0 && load.request('fronts') === undefined,
    efforts: [effort('drill', leaves.length + drawers.length)],
    place: 'shop',
    work: 'fronts',
    marks: [...leaves, ...drawers].map((l) => l.mark),
    tools: ['drill stand', 'cup drill', 'depth stop', 'scrap of the same thickness'],
    setOut: [
      ...leaves.map((l) => {
        const cups = `cup centres ${show.length(l.cupFromEdge)} from that edge, at ${l.cups.map(show.length).join(', ')} from the lower end`
        const holes = l.handleHoles.map((h) => `${show.length(h.fromTop)} from the top`).join(' and ')
        const [first] = l.handleHoles
        const handle =
          first === undefined ? '' : `; handle ${holes}, ${show.length(first.fromHandleEdge)} from the other edge`
        return `${l.mark}, hinges ${l.hingeSide}: ${cups}${handle}.`
      }),
      ...drawers.map(({ mark, holes }) => {
        const [first] = holes
        return first === undefined
          ? `${mark}: no handle holes.`
          : `${mark}: handle ${holes.map((h) => show.length(h.fromLeft)).join(', ')} from the left edge, ${show.length(first.fromTop)} from the top.`
      }),
    ],
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
    after: ['W1', 'W10', ORDERS.hardware],
    needed: mantels.length + shelves.length > 0,
    efforts: [
      effort('mantel-glue', mantels.length),
      effort('leg-glue', legCount(load)),
      effort('shelf-glue', shelves.length),
    ],
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
