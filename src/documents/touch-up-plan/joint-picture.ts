import type { Drawing, DrawingBox, DrawingPoint, Shape } from '../../geometry/drawing.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, less, over, sum, times, ZERO } from '../../units/length.ts'
import type { HelperJoint } from '../audience-fields.ts'
import { bayFrame, bayShapes, overIt } from '../drawings/bay-shapes.ts'
import type { ForHelper } from '../for-helper.ts'

/** One bay with the number of each joint where it is; undefined when the bay was not measured. */
export function jointPicture(bay: NamedBay, joints: readonly HelperJoint[], view: ForHelper): Drawing | undefined {
  const frame = bayFrame(bay, view)
  if (frame === undefined) return undefined
  const spots = joints.flatMap((joint) => {
    const at = jointSpot(joint, bay, view)
    return at === undefined ? [] : [{ joint, at }]
  })
  return {
    says: `The ${bay.name} from the room with joints ${joints[0]?.number ?? ''} to ${joints[joints.length - 1]?.number ?? ''}.`,
    frame,
    shapes: [...bayShapes(bay, view, 'plain'), ...numbers(spots, frame)],
  }
}

interface Spot {
  readonly joint: HelperJoint
  readonly at: DrawingPoint
}

/** Joints at one place share one text: `15/16`. */
function numbers(spots: readonly Spot[], frame: DrawingBox): readonly Shape[] {
  const places = new Map<string, { readonly at: DrawingPoint; readonly says: readonly number[] }>()
  for (const { joint, at } of spots) {
    const key = `${at.x} ${at.z}`
    places.set(key, { at, says: [...(places.get(key)?.says ?? []), joint.number] })
  }
  const side = times(frame.width, SPOT_WIDTH)
  return [...places.values()].map(
    ({ at, says }): Shape => ({
      kind: 'label',
      box: overIt({ x: less(at.x, over(side, 2)), z: at.z, width: side, height: ZERO }, frame),
      lines: [says.join('/')],
    }),
  )
}

/** Room for the numbers at one place, as a share of the bay's width. */
const SPOT_WIDTH = 0.2

/** Where along the wall a joint is, by the words of its id; over and under share a place. */
function jointSpot(joint: HelperJoint, bay: NamedBay, view: ForHelper): DrawingPoint | undefined {
  const wall = view.walls.find((w) => w.bay.id === bay.id)
  if (wall === undefined) return undefined
  const z = heightOf(joint, bay, view)
  return z === undefined ? undefined : { x: sum(wall.originX, times(wall.width, acrossOf(joint.id))), z }
}

/** Share of the bay's width: near its left end, near its right end, or the middle. */
function acrossOf(id: string): number {
  if (/(left|-L\b)/.test(id)) return 0.1
  if (/(right|-R\b)/.test(id)) return 0.9
  return 0.5
}

function heightOf({ id }: HelperJoint, bay: NamedBay, view: ForHelper): Length | undefined {
  const shelf = view.shelves.find((s) => s.bay.id === bay.id && id.includes(`shelf-${s.number}/`))
  if (shelf !== undefined) return shelf.z
  const box = view.boxes.find((b) => b.run.bay.id === bay.id)
  const breast = view.breasts.find((b) => b.bay.id === bay.id)
  if (/kick/.test(id)) return ZERO
  if (/mantel/.test(id)) return mantelHeight(id, breast?.mantel)
  if (/(counter|top-)/.test(id)) return box?.run.z1
  if (/(box|filler|gable)/.test(id)) return box === undefined ? undefined : over(sum(box.run.z0, box.run.z1), 2)
  return undefined
}

function mantelHeight(id: string, mantel: ForHelper['breasts'][number]['mantel']): Length | undefined {
  if (mantel === undefined) return undefined
  if (/leg-/.test(id)) return over(mantel.underside, 2)
  return /(soffit|under)/.test(id) ? mantel.underside : mantel.top
}
