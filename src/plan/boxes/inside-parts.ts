import { carcassThickness } from '../../job/chapters/cabinets.ts'
import type { CutOut, Part } from '../../things/part.ts'
import { type Length, less, over, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { boxPart, insideRear, type Shell } from './box-part.ts'
import { fixedShelfLength, insideHeight, looseShelfDepth, looseShelfLength, partitionDepth } from './box-sizes.ts'
import type { Box, BoxMake } from './boxes.ts'
import { lipCut, lipFor, widestSpan } from './loose-shelf.ts'
import { nailersOf } from './nailers.ts'

/** Dividers, fixed shelves, and loose shelves with their lips. */
export const insideParts = (context: PlanContext, box: Box, make: BoxMake, shell: Shell): readonly Part[] => [
  ...dividers(context, box, make, shell),
  ...fixedShelves(context, box, make, shell),
  ...looseShelves(context, box, make, shell),
]

const PARTITION = { coated: 'both faces', shows: 'front edge' } as const

function dividers(context: PlanContext, box: Box, make: BoxMake, shell: Shell): readonly Part[] {
  const { cut, show } = context
  const t = make.carcass
  return box.dividers.map((at, i) => {
    const length = insideHeight({ boxHeight: box.height, carcassThickness: t, cut })
    const width = partitionDepth({ insideDepth: box.insideDepth, nailer: ZERO, cut })
    const made = boxPart(box, {
      ...PARTITION,
      role: 'J',
      number: i + 1,
      id: `divider-${i + 1}`,
      name: 'divider',
      where: 'upright',
      length,
      width,
      thickness: t,
      details: [`its left face ${show.withUnit(at)} from the box’s left edge; screwed through bottom and top`],
      placement: { x: sum(shell.x, at), y: insideRear(box), z: sum(shell.z, t), dx: t, dy: width, dz: length },
      from: { length: insideHeight, width: partitionDepth, thickness: carcassThickness },
    })
    return { ...made, cutOuts: nailerNotches(context, box, make) }
  })
}

/** How the notch of an upright round a nailer begins its name: it is sawn before the box is put together. */
export const NAILER_NOTCH = 'nailer notch'

/** Where the back is applied the nailers lie inside, and an upright is notched round them at its rear. */
function nailerNotches(context: PlanContext, box: Box, make: BoxMake): readonly CutOut[] {
  if (make.backFit !== 'applied') return []
  const width = context.figures.length('nailer.width')
  return nailersOf(context, box, make).map(({ up }) => ({
    what: `${NAILER_NOTCH}, rear edge`,
    x: ZERO,
    z: less(up, make.carcass),
    width: make.carcass,
    height: width,
  }))
}

function fixedShelves(context: PlanContext, box: Box, make: BoxMake, shell: Shell): readonly Part[] {
  const { cut, show, figures } = context
  const t = make.carcass
  const nailer = figures.length('nailer.width')
  const inTheWay = ({ from, to }: Box['fixedShelves'][number]) =>
    make.backFit === 'applied' && nailersOf(context, box, make).some(({ up }) => from < sum(up, nailer) && to > up)
  return box.fixedShelves.flatMap((shelf, level) =>
    box.compartments.map((compartment, column) => {
      const length = fixedShelfLength({ compartment, cut })
      const behind = inTheWay(shelf) ? t : ZERO
      const width = partitionDepth({ insideDepth: box.insideDepth, nailer: behind, cut })
      const number = level * box.compartments.length + column + 1
      return boxPart(box, {
        ...PARTITION,
        role: 'X',
        number,
        id: `fixed-shelf-${number}`,
        name: 'fixed shelf',
        where: '',
        length,
        width,
        thickness: t,
        details: [`its underside ${show.withUnit(shelf.from)} above the box’s underside; screwed through the uprights`],
        placement: {
          x: sum(shell.x, leftOf(box, make, column)),
          y: sum(insideRear(box), behind),
          z: sum(shell.z, shelf.from),
          dx: length,
          dy: width,
          dz: t,
        },
        from: { length: fixedShelfLength, width: partitionDepth, thickness: carcassThickness },
      })
    }),
  )
}

/** Inner face at the left of a compartment, from the box's left outer edge. */
const leftOf = (box: Box, make: BoxMake, column: number): Length => sum(make.carcass, box.dividers[column - 1] ?? ZERO)

/** Each loose shelf of a box: one in each compartment at each of its heights. */
const looseAt = (box: Box) => {
  const heights = box.openings.flatMap(({ from, to }, i) => {
    const count = box.loose[i] ?? 0
    const pitch = over(less(to, from), count + 1)
    return Array.from({ length: count }, (_, n) => sum(from, nTimes(pitch, n + 1)))
  })
  return heights.flatMap((up) => box.compartments.map((compartment, column) => ({ up, compartment, column })))
}
const nTimes = (pitch: Length, n: number): Length => sum(...Array.from({ length: n }, () => pitch))

function looseShelves(context: PlanContext, box: Box, make: BoxMake, shell: Shell): readonly Part[] {
  const { figures, cut } = context
  const t = make.carcass
  const lip = lipFor(context, { span: widestSpan(box), insideDepth: box.insideDepth, carcass: t })
  return looseAt(box).flatMap(({ up, compartment, column }, i) => {
    const number = i + 1
    const length = looseShelfLength({ compartment, clear: figures.length('loose-shelf.clear'), cut })
    const setBack = figures.length('loose-shelf.set-back')
    const width = looseShelfDepth({ insideDepth: box.insideDepth, setBack, cut })
    const z = cut.near(sum(shell.z, up))
    const y = insideRear(box)
    const x = sum(shell.x, leftOf(box, make, column), over(less(compartment, length), 2))
    const words = { ...PARTITION, role: 'A', number, where: '', length, thickness: t } as const
    const from = { length: looseShelfLength, width: looseShelfDepth, thickness: carcassThickness }
    const shelf = boxPart(box, {
      ...words,
      id: `loose-shelf-${number}`,
      name: 'loose shelf',
      width,
      details: ['on four pins; its height in the picture is only an even spread'],
      placement: { x, y, z, dx: length, dy: width, dz: t },
      from,
    })
    if (lip.kind !== 'lip') return [shelf]
    const placement = { x, y: less(sum(y, width), t), z: less(z, lip.height), dx: length, dy: t, dz: lip.height }
    const detail = 'glued and pinned under the front edge: without it the shelf sags too far'
    const under = { ...words, id: `loose-shelf-${number}-lip`, name: 'shelf lip', piece: 'lip', width: lip.height }
    return [shelf, boxPart(box, { ...under, details: [detail], placement, from: { ...from, width: lipCut } })]
  })
}
