import { choiceField, countField, dayField, textField, yesNoField } from '../entries.ts'

const at = { chapter: 'job', each: 'job' } as const

export const title = textField(
  {
    ...at,
    id: 'title',
    section: 'facts',
    short: 'job',
    asks: () => 'What do you call this job?',
    why: 'It stands on every page, also on the helper’s: no client name in it.',
  },
  60,
  true,
)

export const units = choiceField(
  {
    ...at,
    id: 'units',
    section: 'facts',
    short: 'units',
    asks: () => 'Which units does this job use?',
    why: 'Every size is typed, computed and printed in them; another unit may be written behind a figure.',
  },
  { inch: 'inches', metric: 'millimetres' },
)
export const inchStep = choiceField(
  {
    ...at,
    id: 'inchStep',
    section: 'choices',
    short: 'cut step',
    asks: () => 'How fine do you cut?',
    why: 'Sizes that must enter an opening are rounded down to it.',
    when: (look) => look(units) === 'inch',
  },
  { '1/16': '1/16 in', '1/32': '1/32 in', '1/64': '1/64 in' },
)
export const metricStep = choiceField(
  {
    ...at,
    id: 'metricStep',
    section: 'choices',
    short: 'cut step',
    asks: () => 'How fine do you cut?',
    why: 'Sizes that must enter an opening are rounded down to it.',
    when: (look) => look(units) === 'metric',
  },
  { '1': '1 mm', '0.5': '0.5 mm' },
)
export const currency = choiceField(
  {
    ...at,
    id: 'currency',
    section: 'choices',
    short: 'currency',
    asks: () => 'In which money is it priced?',
    why: 'Named once on the quote; amounts carry no sign.',
  },
  {
    USD: 'US dollar',
    CAD: 'Canadian dollar',
    EUR: 'euro',
    GBP: 'pound sterling',
    AUD: 'Australian dollar',
    NZD: 'New Zealand dollar',
    CHF: 'Swiss franc',
  },
)
export const startDay = dayField({
  ...at,
  id: 'startDay',
  section: 'choices',
  short: 'start',
  asks: () => 'On which day is the quote accepted, at the earliest?',
  why: 'Every date of the job is counted from it.',
})
export const houseYear = countField(
  {
    ...at,
    id: 'houseYear',
    section: 'facts',
    missing: 'assume',
    short: 'house built',
    asks: () => 'In which year was the house built?',
    why: 'Old paint may hold lead: it decides what may be cut, stripped or sanded.',
    help: 'Ask the client, or look at the deeds. Left out: it is treated as old.',
  },
  1500,
  2100,
)
export const leadTested = yesNoField({
  ...at,
  id: 'leadTested',
  section: 'facts',
  short: 'lead tested',
  asks: () => 'Was the old paint tested and found free of lead?',
  why: 'Without a test it is handled as lead paint.',
  when: (look) => (look(houseYear) ?? 0) < 1978,
})
export const siteAddress = textField(
  {
    ...at,
    id: 'siteAddress',
    section: 'private',
    short: 'site address',
    asks: () => 'Where is the site?',
    why: 'The only thing about the client that a helper’s paper shows.',
  },
  120,
  false,
)
export const clientName = textField(
  {
    ...at,
    id: 'clientName',
    section: 'private',
    short: 'client',
    asks: () => 'Who is the client?',
    why: 'For the quote only.',
  },
  80,
  false,
)
export const clientContact = textField(
  {
    ...at,
    id: 'clientContact',
    section: 'private',
    short: 'contact',
    asks: () => 'How is the client reached?',
    why: 'Stays in the office.',
  },
  120,
  false,
)
export const yourBusiness = textField(
  {
    ...at,
    id: 'yourBusiness',
    section: 'private',
    short: 'your business',
    asks: () => 'Your name, trade and address, as they stand on a quote?',
    why: 'Head of the quote and of supplier requests.',
  },
  200,
  false,
)
export const privateNote = textField(
  {
    ...at,
    id: 'privateNote',
    section: 'private',
    short: 'private note',
    asks: () => 'Anything to remember that nobody else should read?',
    why: 'Kept in the job file, printed nowhere but in the office folder.',
  },
  2000,
  false,
)

export const JOB_FIELDS = [
  title,
  units,
  inchStep,
  metricStep,
  currency,
  startDay,
  houseYear,
  leadTested,
  siteAddress,
  clientName,
  clientContact,
  yourBusiness,
  privateNote,
] as const
