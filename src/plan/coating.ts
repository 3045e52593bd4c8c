import type { CoatingSystem } from '../kinds/coating.ts'
import type { Message } from '../things/message.ts'
import type { SurfaceId } from '../things/part.ts'
import type { Area } from '../units/area.ts'
import type { Volume } from '../units/volume.ts'
import type { PlanContext } from './context.ts'
import type { MantelPlan } from './mantel.ts'
import type { SupplyPlan } from './supply.ts'
import type { Survey } from './survey.ts'

/** One product on one surface group: area of a coat, coats, litres with losses. */
export interface CoatingLine {
  readonly surface: SurfaceId
  readonly layer: 'sealer' | 'primer' | 'top'
  readonly product: string
  readonly area: Area
  readonly coats: number
  readonly wetMicrons: number
  readonly litres: Volume
  readonly recoatHoursLeast: number
  readonly recoatHoursMost: number | null
  readonly sandBetween: boolean
}

export interface CoatingPlan {
  readonly systems: Readonly<Partial<Record<SurfaceId, CoatingSystem>>>
  readonly lines: readonly CoatingLine[]
  readonly areas: Readonly<Record<SurfaceId, Area>>
  readonly method: 'hand' | 'hvlp' | 'airless'
  readonly where: 'shop' | 'site' | 'spray shop'
  readonly colours: Readonly<Record<SurfaceId, string>>
  readonly messages: readonly Message[]
}

export function coating(_context: PlanContext, _survey: Survey, _supply: SupplyPlan, _mantel: MantelPlan): CoatingPlan {
  const zero = 0 as Area
  return {
    systems: {},
    lines: [],
    areas: { 'built-in': zero, masonry: zero, wall: zero },
    method: 'hand',
    where: 'shop',
    colours: { 'built-in': '', masonry: '', wall: '' },
    messages: [],
  }
}
