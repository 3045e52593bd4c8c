import type { QuestionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import type { NamedBay } from '../../things/place.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { Light, LightMake } from './light.ts'
import { driverNeed, lightLoad } from './light-sums.ts'

/** Sizes a driver is sold in, the smallest first: a row of watts and a row of price each. */
const SIZES = ['small', 'middle', 'large'] as const
export type DriverSize = (typeof SIZES)[number]

/** The drivers of one bay's lights. */
export interface Drivers {
  /** `a/light-driver` */
  readonly id: string
  readonly bay: NamedBay
  /** The box it sits in; undefined = elsewhere, within reach. */
  readonly box: Box | undefined
  readonly load: number
  readonly size: DriverSize
  /** Watts in its name. */
  readonly watts: number
  readonly count: number
  readonly waitsFor: readonly QuestionKey[]
}

/** The smallest driver that carries the bay's lights for good; several of the largest where one does not. */
export function driversOf(
  { figures }: PlanContext,
  make: LightMake,
  bay: { readonly bay: NamedBay; readonly lights: readonly Light[]; readonly box: Box | undefined },
): Drivers {
  const id = `${bay.bay.id}/light-driver`
  return within(id, () => {
    const load = lightLoad({ strips: bay.lights.map((l) => l.strip), lightWatts: make.watts })
    const need = driverNeed({ load, driverShare: figures.number('lights.driver-share') })
    const sizes = SIZES.map((size) => ({ size, watts: figures.number(`lights.driver-${size}`) }))
    const [fit = { size: 'large' as const, watts: figures.number('lights.driver-large') }] = sizes.filter(
      ({ watts }) => watts >= need,
    )
    return {
      id,
      bay: bay.bay,
      box: bay.box,
      load,
      ...fit,
      count: Math.max(1, Math.ceil(need / fit.watts)),
      waitsFor: [...new Set(bay.lights.flatMap((l) => l.waitsFor))],
    }
  })
}
