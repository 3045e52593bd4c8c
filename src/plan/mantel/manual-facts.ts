import { manualClearances, manualModel } from '../../job/chapters/firebox.ts'
import type { FuelKind } from '../../kinds/fuel/contract.ts'
import type { ManualFigures } from '../../kinds/fuel/manual-rule.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { NamedBay } from '../../things/place.ts'
import { ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { manualMissing } from './firebox-messages.ts'

/** What an appliance's manual says of the wood round it, as far as it was entered. */
export interface ManualFacts {
  readonly figures: ManualFigures | undefined
  readonly waitsFor: readonly QuestionKey[]
  readonly messages: readonly Message[]
}
const NO_MANUAL: ManualFacts = { figures: undefined, waitsFor: [], messages: [] }

/** Reads the manual where one governs; what is missing of it stops the packet. */
export function manualFacts({ settle, figures }: PlanContext, bay: NamedBay, kind: FuelKind): ManualFacts {
  if (kind.governedBy !== 'manual') return NO_MANUAL
  const model = settle.asked(manualModel, bay)?.trim() ?? ''
  const keptOff = figures.length('mantel.above-opening')
  const clear = settle.measured(manualClearances, bay, () => ({
    value: [keptOff, keptOff, ZERO],
    because: 'no wood near it, until the manual is read',
  }))
  const [above = ZERO, sides = ZERO, standsOut = ZERO] = clear.value
  const entered = clear.waitsFor.length === 0
  const missing = [
    ...(model === '' ? [{ says: 'model and edition', about: questionKey(bay.id, manualModel) }] : []),
    ...(entered ? [] : [{ says: 'clearances', about: questionKey(bay.id, manualClearances) }]),
  ]
  return {
    figures: entered ? { above, sides, standsOut } : undefined,
    waitsFor: clear.waitsFor,
    messages: missing.map((m) =>
      raise(manualMissing, { about: m.about, place: bay.name }, { fuel: kind.says, missing: m.says }),
    ),
  }
}
