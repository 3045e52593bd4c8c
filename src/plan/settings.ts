import { currency, inchStep, metricStep, title, units } from '../job/chapters/job.ts'
import { type Show, showIn } from '../things/show.ts'
import { inches, type Length, millimetres } from '../units/length.ts'
import { type CutStep, cutStep } from '../units/round.ts'
import type { UnitSystem } from '../units/show-length.ts'
import type { Settle } from './settle.ts'

const INCH_STEPS = { '1/16': inches(0, 1, 16), '1/32': inches(0, 1, 32), '1/64': inches(0, 1, 64) } as const
const METRIC_STEPS = { '1': millimetres(1), '0.5': millimetres(0.5) } as const

/** Units, cut step, currency of the job, and how its values are written. */
export function settings(settle: Settle): { readonly units: UnitSystem; readonly cut: CutStep; readonly show: Show } {
  settle.choice(title, undefined, () => ({ value: 'Built-ins', because: 'until you name it' }))
  const system = settle.choice(units, undefined, () => ({
    value: 'inch' as const,
    because: 'tapes here are mostly in inches',
  }))
  const money = settle.choice(currency, undefined, () => ({
    value: system === 'inch' ? ('USD' as const) : ('EUR' as const),
    because: 'goes with the units',
  }))
  return { units: system, cut: cutStep(stepOf(settle, system)), show: showIn(system, money) }
}

const stepOf = (settle: Settle, system: UnitSystem): Length =>
  system === 'inch'
    ? INCH_STEPS[
        settle.choice(inchStep, undefined, () => ({
          value: '1/16' as const,
          because: 'what a tape and a table saw hold',
        }))
      ]
    : METRIC_STEPS[
        settle.choice(metricStep, undefined, () => ({
          value: '1' as const,
          because: 'what a tape and a table saw hold',
        }))
      ]
