import { wallColour } from '../../job/chapters/finish.ts'
import { questionKey } from '../../things/field.ts'
import { formula } from '../../things/formula.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { DatedTask } from '../../things/task.ts'
import { type Day, daysBetween } from '../../units/day.ts'
import type { PlanContext } from '../context.ts'

/** How often the joints are taped: again before the paint where the first tape would stand too long. */
export type Taping = 'once' | 'twice'

/** Tape that would stand on the wall longer than it comes off clean. */
export const tapeTooLong = messageKind<{ readonly days: number; readonly most: number }>({
  code: 'N11',
  weight: 'note',
  source: 'common practice, no source; the label of the tape says how long',
  says: ({ days, most }) => ({
    short: `The tape would stand ${days} days on the wall.`,
    why: `Plain masking tape comes off clean for about ${most} days: the label says how long yours does. Nights and days off count.`,
    todo: 'Planned: pulled after the last pass of caulk and taped again before the paint, with its hours.',
  }),
})

/** Days the tape stands on the wall, from the day it goes on to the day it comes off with the paint still soft. */
const tapeDays = formula<{ on: Day; off: Day }, number>(
  {
    id: 'tape.days',
    plain: 'days from taping to the wall coats, days off counted',
    source: 'calendar',
    gives: 'days',
  },
  ({ on, off }) => daysBetween(on, off),
)

/** Whether the dated steps leave the tape on for too long, and the note that says so; nothing when nothing is taped. */
export function tapeTime(
  { figures }: PlanContext,
  dated: readonly DatedTask[],
): { readonly taping: Taping; readonly messages: readonly Message[] } {
  const on = dated.find((t) => t.id === 'D2')?.start
  const off = dated.find((t) => t.id === 'D4')?.finish
  const most = figures.number('tape.days-on')
  const days = on === undefined || off === undefined ? 0 : tapeDays({ on, off })
  if (days <= most) return { taping: 'once', messages: [] }
  const where = { about: questionKey('job', wallColour), place: 'joints' }
  return { taping: 'twice', messages: [raise(tapeTooLong, where, { days, most })] }
}
