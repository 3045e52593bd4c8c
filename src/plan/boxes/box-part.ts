import type { Part, Placement, Role } from '../../things/part.ts'
import { type Length, less, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { type MadePart, madePart } from '../made-part.ts'
import { boxPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import { shellDepth } from './box-sizes.ts'
import type { Box, BoxMake } from './boxes.ts'

/** Where the shell of a box stands, in the wall's axes. */
export interface Shell {
  readonly x: Length
  readonly y: Length
  readonly z: Length
  /** Depth of sides, bottom and top. */
  readonly depth: Length
}

export function shellOf({ cut }: PlanContext, box: Box, make: BoxMake): Shell {
  const behind = make.backFit === 'applied' ? make.back : ZERO
  return {
    x: sum(box.run.wall.originX, box.x),
    y: sum(box.backGap, behind),
    z: box.z,
    depth: shellDepth({ boxDepth: box.depth, behind, cut }),
  }
}

/** Rear of what stands inside a box: the inner face of its back. */
export const insideRear = (box: Box): Length => less(sum(box.backGap, box.depth), box.insideDepth)

export type BoxPartWords = Pick<MadePart, 'name' | 'length' | 'width' | 'thickness' | 'shows'> &
  Required<Pick<MadePart, 'from'>> &
  Partial<Pick<MadePart, 'piece' | 'details'>> & {
    readonly role: Role
    readonly number: number
    readonly id: string
    readonly where: string
    readonly coated: 'both faces' | 'no'
    readonly placement: Placement
  }

/** One part of a box, with its mark and its way through the packet. */
export function boxPart(box: Box, { role, number, id, where, coated, ...rest }: BoxPartWords): Part {
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
