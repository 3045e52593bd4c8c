import { backThickness, carcassThickness } from '../../job/chapters/cabinets.ts'
import type { Part, Placement } from '../../things/part.ts'
import { type Length, less, over, sum, times } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { type BoxPartWords, boxPart, type Shell, shellOf } from './box-part.ts'
import { appliedBack, groovedBack, insideWidth, shellDepth } from './box-sizes.ts'
import type { Box, BoxMake } from './boxes.ts'
import { insideParts } from './inside-parts.ts'
import { nailersOf } from './nailers.ts'
import { INSIDE_PAINTED } from './prefinished.ts'

/** All parts of one box without its leaves: sides, bottom, top or rails, back, nailers, and what stands inside. */
export function boxParts(context: PlanContext, box: Box, make: BoxMake): readonly Part[] {
  const shell = shellOf(context, box, make)
  return [
    ...sides(box, make, shell),
    ...bottomAndTop(context, box, make, shell),
    back(context, box, make),
    ...nailers(context, box, make, shell),
    ...insideParts(context, box, make, shell),
  ]
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
      from: { length: box.heightFrom, width: shellDepth, thickness: carcassThickness },
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
  const bottom = across(box, make, shell, {
    role: 'B',
    number: 1,
    id: 'bottom',
    name: 'bottom',
    where: '',
    shows: 'front edge',
    details: pulledUp(context, box, make),
    z: shell.z,
  })
  const topZ = less(sum(shell.z, box.height), make.carcass)
  if (make.top === 'full') {
    const top = { role: 'T', number: 1, id: 'top', name: 'top', where: '', shows: 'front edge', z: topZ } as const
    return [bottom, across(box, make, shell, top)]
  }
  const width = context.figures.length('nailer.width')
  const rails = (['rear', 'front'] as const).map((where, i) =>
    across(box, make, shell, {
      role: 'T',
      number: i + 1,
      id: `rail-${where}`,
      name: 'top rail',
      where,
      shows: where === 'front' ? 'front edge' : 'nothing',
      z: topZ,
      rail: { width, y: where === 'rear' ? shell.y : less(sum(shell.y, shell.depth), width) },
    }),
  )
  return [bottom, ...rails]
}

type Across = Pick<BoxPartWords, 'role' | 'number' | 'id' | 'name' | 'where' | 'shows' | 'details'> & {
  readonly z: Length
  /** A rail instead of a panel over the whole depth. */
  readonly rail?: { readonly width: Length; readonly y: Length }
}

/** A level panel or rail between the sides. */
function across(box: Box, { carcass: t }: BoxMake, shell: Shell, { z, rail, ...words }: Across): Part {
  const width = rail?.width ?? shell.depth
  return boxPart(box, {
    ...words,
    length: box.insideWidth,
    width,
    thickness: t,
    coated: 'both faces',
    placement: { x: sum(shell.x, t), y: rail?.y ?? shell.y, z, dx: box.insideWidth, dy: width, dz: t },
    from: {
      length: insideWidth,
      width: rail === undefined ? shellDepth : { id: 'nailer.width' },
      thickness: carcassThickness,
    },
  })
}

/** What rounding the inside down leaves is pulled up with the joining screws. */
function pulledUp({ show }: PlanContext, box: Box, { carcass }: BoxMake): readonly string[] {
  const play = less(box.width, times(carcass, 2), box.insideWidth)
  return play > 0
    ? [`the box is ${show.withUnit(play)} narrower than its place: pull the joint up with the joining screws`]
    : []
}

function back(context: PlanContext, box: Box, make: BoxMake): Part {
  const { figures, show } = context
  const [t, backThick] = [make.carcass, make.back]
  const applied = make.backFit === 'applied'
  const sized = (outer: Length) => backSize(context, make, outer)
  const [width, height] = [sized(box.width), sized(box.height)]
  const placement: Placement = {
    x: sum(box.run.wall.originX, box.x, over(less(box.width, width), 2)),
    y: applied ? box.backGap : sum(box.backGap, t),
    z: sum(box.z, over(less(box.height, height), 2)),
    dx: width,
    dy: backThick,
    dz: height,
  }
  const groove = show.withUnit(figures.length('back.groove'))
  const from = applied ? appliedBack : groovedBack
  return boxPart(box, {
    role: 'K',
    number: 1,
    id: 'back',
    name: 'back',
    where: applied ? 'behind' : 'in its grooves',
    length: width,
    width: height,
    thickness: backThick,
    shows: 'inner face',
    details: applied ? [] : [`in grooves ${groove} deep, ${show.withUnit(t)} from the rear edges`],
    coated: 'both faces',
    placement,
    from: { length: from, width: from, thickness: backThickness },
  })
}

/** One size of the back by one outer size of its box. */
function backSize({ figures, cut }: PlanContext, { backFit, carcass }: BoxMake, outer: Length): Length {
  if (backFit === 'applied') return appliedBack({ outer, ease: figures.length('back.ease'), cut })
  const groove = figures.length('back.groove')
  const grooveClear = figures.length('back.groove-clear')
  return groovedBack({ outer, carcassThickness: carcass, groove, grooveClear, cut })
}

function nailers(context: PlanContext, box: Box, make: BoxMake, shell: Shell): readonly Part[] {
  const [t, width] = [make.carcass, context.figures.length('nailer.width')]
  const seen = make.backFit === 'applied'
  return nailersOf(context, box, make).map(({ at, up }, i) =>
    boxPart(box, {
      role: 'N',
      number: i + 1,
      id: `nailer-${i + 1}`,
      name: 'nailer',
      where: seen ? `${at} rear, inside` : `${at}, behind the back`,
      length: box.insideWidth,
      width,
      thickness: t,
      shows: seen ? 'inner face' : 'nothing',
      coated: seen ? 'both faces' : 'no',
      placement: {
        x: sum(shell.x, t),
        y: seen ? shell.y : box.backGap,
        z: sum(shell.z, up),
        dx: box.insideWidth,
        dy: t,
        dz: width,
      },
      from: { length: insideWidth, width: { id: 'nailer.width' }, thickness: carcassThickness },
    }),
  )
}
