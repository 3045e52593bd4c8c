import { type DeviceRow, devices } from '../../src/job/chapters/wall-devices.ts'
import type { Job } from '../../src/job/job.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { Part } from '../../src/things/part.ts'
import { partsOf, reading, type Solid, solidOf } from './placed.ts'

interface Rectangle {
  readonly x0: number
  readonly x1: number
  readonly z0: number
  readonly z1: number
}

/** Devices that end up behind a back or side without an opening over them, and openings that meet a panel's edge. */
export function cutOutFaults(job: Job, plan: Plan, bay: string): readonly string[] {
  const own = partsOf(plan, bay)
  return (reading(job, devices, bay) ?? [])
    .filter((d) => d.fate !== 'move')
    .flatMap((device) => {
      const behind = own.filter((p) => covers(job, plan, p, device))
      return behind.flatMap((part) => openingFaults(job, part, device))
    })
}

const rectangleOf = (d: DeviceRow): Rectangle => ({ x0: d.x, x1: d.x + d.width, z0: d.z, z1: d.z + d.height })

/** The panel in its own plane: a back seen from the front, a side along the return. */
const faceOf = (s: Solid, wall: DeviceRow['wall']): Rectangle =>
  wall === 'back' ? { x0: s.x0, x1: s.x1, z0: s.z0, z1: s.z1 } : { x0: s.y0, x1: s.y1, z0: s.z0, z1: s.z1 }

const meet = (a: Rectangle, b: Rectangle) => a.x0 < b.x1 && b.x0 < a.x1 && a.z0 < b.z1 && b.z0 < a.z1

function covers(job: Job, plan: Plan, part: Part, device: DeviceRow): boolean {
  const boxes = plan.boxes.boxes.filter((b) => b.run.bay.id === part.bay)
  const outer = device.wall === 'left' ? boxes[0] : boxes.at(-1)
  const id = device.wall === 'back' ? /\/box-\d+\/back$/ : new RegExp(`^${outer?.id}/side-${device.wall}$`)
  return id.test(part.id) && meet(faceOf(solidOf(job, part), device.wall), rectangleOf(device))
}

function openingFaults(job: Job, part: Part, device: DeviceRow): readonly string[] {
  const face = faceOf(solidOf(job, part), device.wall)
  const wanted = rectangleOf(device)
  const openings = part.cutOuts.map((c) => ({
    x0: face.x0 + c.x,
    x1: face.x0 + c.x + c.width,
    z0: face.z0 + c.z,
    z1: face.z0 + c.z + c.height,
  }))
  const over = openings.find((o) => o.x0 < wanted.x0 && o.x1 > wanted.x1 && o.z0 < wanted.z0 && o.z1 > wanted.z1)
  if (over === undefined) return [`${device.what} at ${device.x} is covered by ${part.id}`]
  const inside = over.x0 > face.x0 && over.x1 < face.x1 && over.z0 > face.z0 && over.z1 < face.z1
  return inside ? [] : [`the opening for the ${device.what} at ${device.x} breaks the edge of ${part.id}`]
}
