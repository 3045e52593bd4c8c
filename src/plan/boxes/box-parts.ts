import type { Part, Placement } from '../../things/part.ts'
import { type Length, less, over, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { type MadePart, madePart } from '../made-part.ts'
import { boxPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import type { Box, BoxMake } from './boxes.ts'
import { lipHeight, longestShelfSpan, shelfStrengthOf } from './loose-shelf.ts'
import { carcassThicknessOf } from './panel-thickness.ts'

/** All parts of one box without its leaves: sides, bottom, top or rails, back, nailers, loose shelves with their lips. */
export function boxParts(context: PlanContext, box: Box, make: BoxMake): readonly Part[] {
  const shell = shellOf(context, box, make)
  return [
    ...sides(box, make, shell),
    ...bottomAndTop(context, box, make, shell),
    back(context, box, make),
    ...nailers(context, box, make, shell),
    ...looseShelfParts(context, box, make, shell),
  ]
}

/** Where the shell of a box stands, in the wall's axes. */
interface Shell {
  readonly x: Length
  readonly y: Length
  readonly z: Length
  /** Depth of sides, bottom and top. */
  readonly depth: Length
}

function shellOf(context: PlanContext, box: Box, make: BoxMake): Shell {
  const behind = make.backFit === 'applied' ? make.back : ZERO
  return {
    x: sum(box.run.wall.originX, box.x),
    y: sum(box.backGap, behind),
    z: box.run.z0,
    // Down to what a tape shows: the hair that is lost stays behind the back.
    depth: context.cut.down(less(box.depth, behind)),
  }
}

type BoxPartWords = Pick<MadePart, 'name' | 'length' | 'width' | 'thickness' | 'shows'> &
  Partial<Pick<MadePart, 'piece' | 'details'>> & {
    readonly role: 'S' | 'T' | 'B' | 'K' | 'A' | 'N'
    readonly number: number
    readonly id: string
    readonly where: string
    readonly coated: 'both faces' | 'no'
    readonly placement: Placement
  }

/** Inside faces are seen when a door opens, so the panels of a painted box are coated all round. */
const INSIDE_PAINTED = 'inside is painted too: it is seen when a door opens'

function boxPart(box: Box, { role, number, id, where, coated, ...rest }: BoxPartWords): Part {
  return madePart({
    ...rest,
    id: `${box.id}/${id}`,
    mark: boxPartMark(box.run.bay, box.number, role, number),
    bay: box.run.bay.id,
    goesTo: `${box.run.bay.name}, box ${box.number}${where === '' ? '' : `, ${where}`}`,
    material: mdf(rest.thickness),
    ...(coated === 'no' ? {} : { coat: { surface: 'built-in', faces: 2 } }),
    waitsFor: box.waitsFor,
  })
}

function sides(box: Box, make: BoxMake, shell: Shell): readonly Part[] {
  const t = make.carcass
  return (['left', 'right'] as const).map((side, i) =>
    boxPart(box, {
      role: 'S',
      number: i + 1,
      id: `side-${side}`,
      name: 'side',
      where: side,
      length: box.height,
      width: shell.depth,
      thickness: t,
      shows: 'front edge',
      details: [INSIDE_PAINTED],
      coated: 'both faces',
      placement: {
        x: side === 'left' ? shell.x : less(sum(shell.x, box.width), t),
        y: shell.y,
        z: shell.z,
        dx: t,
        dy: shell.depth,
        dz: box.height,
      },
    }),
  )
}

function bottomAndTop(context: PlanContext, box: Box, make: BoxMake, shell: Shell): readonly Part[] {
  const t = make.carcass
  const across = { length: box.insideWidth, thickness: t, coated: 'both faces' } as const
  const level = (z: Length, y: Length, dy: Length): Placement => ({
    x: sum(shell.x, t),
    y,
    z,
    dx: box.insideWidth,
    dy,
    dz: t,
  })
  const topZ = less(sum(shell.z, box.height), t)
  const play = less(box.width, times(t, 2), box.insideWidth)
  const pulled =
    play > 0
      ? [`the box is ${context.show.withUnit(play)} narrower than its place: pull the joint up with the joining screws`]
      : []
  const bottom = boxPart(box, {
    ...across,
    role: 'B',
    number: 1,
    id: 'bottom',
    name: 'bottom',
    where: '',
    width: shell.depth,
    shows: 'front edge',
    details: pulled,
    placement: level(shell.z, shell.y, shell.depth),
  })
  if (make.top === 'full') {
    const placement = level(topZ, shell.y, shell.depth)
    const top = { ...across, role: 'T', number: 1, id: 'top', name: 'top', where: '', width: shell.depth } as const
    return [bottom, boxPart(box, { ...top, shows: 'front edge', placement })]
  }
  const width = context.figures.length('nailer.width')
  const rails = (['rear', 'front'] as const).map((where, i) => {
    const y = where === 'rear' ? shell.y : less(sum(shell.y, shell.depth), width)
    const rail = { ...across, role: 'T', number: i + 1, id: `rail-${where}`, name: 'top rail', where, width } as const
    const shows = where === 'front' ? 'front edge' : 'nothing'
    return boxPart(box, { ...rail, shows, placement: level(topZ, y, width) })
  })
  return [bottom, ...rails]
}

function back(context: PlanContext, box: Box, make: BoxMake): Part {
  const { figures, cut } = context
  const [t, backThickness] = [make.carcass, make.back]
  const ease = times(figures.length('back.ease'), 2)
  const groove = figures.length('back.groove')
  const inGroove = less(times(groove, 2), figures.length('back.groove-clear'))
  const applied = make.backFit === 'applied'
  const width = cut.down(applied ? less(box.width, ease) : sum(less(box.width, times(t, 2)), inGroove))
  const height = cut.down(applied ? less(box.height, ease) : sum(less(box.height, times(t, 2)), inGroove))
  const placement: Placement = {
    x: sum(box.run.wall.originX, box.x, over(less(box.width, width), 2)),
    y: applied ? box.backGap : sum(box.backGap, t),
    z: sum(box.run.z0, over(less(box.height, height), 2)),
    dx: width,
    dy: backThickness,
    dz: height,
  }
  const grooved = `in grooves ${context.show.withUnit(groove)} deep, ${context.show.withUnit(t)} from the rear edges`
  return boxPart(box, {
    role: 'K',
    number: 1,
    id: 'back',
    name: 'back',
    where: applied ? 'behind' : 'in its grooves',
    length: width,
    width: height,
    thickness: backThickness,
    shows: 'inner face',
    details: applied ? [] : [grooved],
    coated: 'both faces',
    placement,
  })
}

function nailers(context: PlanContext, box: Box, make: BoxMake, shell: Shell): readonly Part[] {
  const { figures } = context
  const [t, width] = [make.carcass, figures.length('nailer.width')]
  const high = box.height > figures.length('nailer.second-above')
  const topZ = less(sum(shell.z, box.height), t, width)
  const middleZ = sum(shell.z, over(less(box.height, width), 2))
  const seen = make.backFit === 'applied'
  return [
    { where: seen ? 'top rear, inside' : 'top, behind the back', z: topZ },
    ...(high ? [{ where: seen ? 'middle rear, inside' : 'middle, behind the back', z: middleZ }] : []),
  ].map(({ where, z }, i) =>
    boxPart(box, {
      role: 'N',
      number: i + 1,
      id: `nailer-${i + 1}`,
      name: 'nailer',
      where,
      length: box.insideWidth,
      width,
      thickness: t,
      shows: seen ? 'inner face' : 'nothing',
      coated: seen ? 'both faces' : 'no',
      placement: {
        x: sum(shell.x, t),
        y: seen ? shell.y : box.backGap,
        z,
        dx: box.insideWidth,
        dy: t,
        dz: width,
      },
    }),
  )
}

function looseShelfParts(context: PlanContext, box: Box, make: BoxMake, shell: Shell): readonly Part[] {
  const { figures, cut } = context
  const t = make.carcass
  const length = cut.down(less(box.width, times(t, 2), figures.length('loose-shelf.clear')))
  const width = cut.down(less(box.insideDepth, figures.length('loose-shelf.set-back')))
  const lip = lipFor(context, box)
  const pitch = over(less(box.height, times(t, 2)), box.looseShelves + 1)
  return Array.from({ length: box.looseShelves }, (_, i) => i + 1).flatMap((number) => {
    const z = cut.near(sum(shell.z, t, times(pitch, number)))
    const y = less(sum(box.backGap, box.depth), box.insideDepth)
    const x = sum(shell.x, over(less(box.width, length), 2))
    const words = {
      role: 'A',
      number,
      where: '',
      length,
      thickness: t,
      coated: 'both faces',
      shows: 'front edge',
    } as const
    const shelf = boxPart(box, {
      ...words,
      id: `loose-shelf-${number}`,
      name: 'loose shelf',
      width,
      details: ['on four pins; its height in the picture is only an even spread'],
      placement: { x, y, z, dx: length, dy: width, dz: t },
    })
    if (lip.kind !== 'lip') return [shelf]
    const placement = { x, y: less(sum(y, width), t), z: less(z, lip.height), dx: length, dy: t, dz: lip.height }
    const detail = 'glued and pinned under the front edge: without it the shelf sags too far'
    const under = { ...words, id: `loose-shelf-${number}-lip`, name: 'shelf lip', piece: 'lip', width: lip.height }
    return [shelf, boxPart(box, { ...under, details: [detail], placement })]
  })
}

/** What a loose shelf of a box needs to carry its load: nothing, a lip under its front edge, or a shorter span. */
export type LooseShelfLip =
  | { readonly kind: 'none' }
  | { readonly kind: 'lip'; readonly height: Length }
  | { readonly kind: 'too long'; readonly mostSpan: Length }

/** The lip a box's loose shelves need; a span that even the deepest lip does not carry is too long. */
export function lipFor(context: PlanContext, box: Box): LooseShelfLip {
  const { cut, figures } = context
  const t = carcassThicknessOf(context)
  const strength = shelfStrengthOf(context, t)
  const plain = longestShelfSpan(strength)
  if (box.insideWidth <= plain) return { kind: 'none' }
  const depth = cut.down(less(box.insideDepth, figures.length('loose-shelf.set-back')))
  const height = cut.up(lipHeight({ ...strength, span: box.insideWidth, depth }))
  return height <= figures.length('loose-shelf.lip-most')
    ? { kind: 'lip', height }
    : { kind: 'too long', mostSpan: plain }
}
