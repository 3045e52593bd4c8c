import { crownFate, kick } from '../../job/chapters/cabinets.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { Built } from '../built.ts'
import { parseMark } from '../marks.ts'
import { crownReturnsLeftOut, levellersLeftOut } from './left-out-messages.ts'

/** What this plan does not work out though the job touches it, each said once and only where it matters. */
export function leftOut(built: Built): readonly Message[] {
  const { slots, survey, parts } = built
  const crownCut = !slots.levels.crownKept && survey.walls.some((wall) => wall.crown.drop > 0)
  const ofJob = (field: { readonly id: string }) => ({ about: questionKey('job', field), place: 'whole wall' })
  return [
    ...(crownCut && slots.runs.length > 0 ? [raise(crownReturnsLeftOut, ofJob(crownFate), {})] : []),
    ...(parts.some((part) => parseMark(part.mark)?.role === 'U') ? [raise(levellersLeftOut, ofJob(kick), {})] : []),
  ]
}
