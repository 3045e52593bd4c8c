import { choiceField, hoursField, textField } from '../entries.ts'

const at = { chapter: 'install', section: 'choices', each: 'job' } as const

export const dayHours = hoursField(
  {
    ...at,
    id: 'dayHours',
    short: 'hours a day',
    asks: () => 'How many hours do you work in a day?',
    why: 'Hours become days by it.',
  },
  1,
  14,
)
export const workWeek = choiceField(
  {
    ...at,
    id: 'workWeek',
    short: 'working days',
    asks: () => 'Which days do you work?',
    why: 'Drying goes on over the others.',
  },
  { 'mon-fri': 'Monday to Friday', 'mon-sat': 'Monday to Saturday', 'mon-thu': 'Monday to Thursday' },
)
export const daysOff = textField(
  {
    ...at,
    id: 'daysOff',
    short: 'days off',
    asks: () => 'Which days are you away? (2026-12-24 2026-12-25 …)',
    why: 'No work is planned on them.',
  },
  400,
  false,
)
export const secondPair = choiceField(
  {
    ...at,
    id: 'secondPair',
    short: 'second person',
    asks: () => 'Is there a second pair of hands for heavy lifts?',
    why: 'Some pieces are not carried alone.',
  },
  { always: 'always', 'on-call': 'when it is asked for', never: 'never' },
)
export const siteNote = textField(
  {
    ...at,
    id: 'siteNote',
    short: 'note for the helper',
    asks: () => 'Anything the helper must know about the site: parking, key, pets?',
    why: 'Printed for the helper.',
  },
  500,
  false,
)

export const INSTALL_FIELDS = [dayHours, workWeek, daysOff, secondPair, siteNote] as const
