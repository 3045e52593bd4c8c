import { baseboardFate } from '../../job/chapters/cabinets.ts'
import { houseYear, leadTested } from '../../job/chapters/job.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import { type Area, SQUARE_METRES_PER_SQUARE_FOOT } from '../../units/area.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'
import { type StripOut, stripOut } from './strip-out.ts'

/** What old paint asks of this job. */
export interface OldPaint {
  /** Built before the year of the rule or not known, and not tested free of lead. */
  readonly mayHoldLead: boolean
  /** Whether the work cuts, strips or scrapes anything painted. */
  readonly disturbs: boolean
  readonly stripOut: StripOut
  readonly messages: readonly Message[]
}

interface Disturbed extends Readonly<Record<string, number | string>> {
  readonly area: string
  /** The area, or the work where no trim comes off. */
  readonly what: string
  readonly limit: string
  readonly year: string
}

export const overMinorWork = messageKind<Disturbed>({
  code: 'S19',
  weight: 'stop',
  source:
    '40 CFR 745.83 (minor repair: up to 6 square feet of painted surface in a room); local rules govern elsewhere',
  says: ({ area, limit, year }) => ({
    short: `Old paint: ${area} would be disturbed, ${limit} is the most for minor work.`,
    why: `The house is treated as built before ${year} and the paint is not tested: it may hold lead.`,
    todo: 'Have the paint tested and answer so, keep the trim, or leave its removal to a certified lead-safe firm.',
  }),
})

export const paintMayHoldLead = messageKind<Disturbed>({
  code: 'C15',
  weight: 'confirm',
  source: '40 CFR 745, final rule 2008; asbestos: common practice, no source',
  says: ({ what, year }) => ({
    short: `Old paint is disturbed (${what}): it may hold lead, old coatings and flue rope asbestos.`,
    why: `The house is treated as built before ${year} and the paint is not tested.`,
    todo: 'Confirm that it is worked as lead paint: wet, sheeted, HEPA vacuum, no torch. Stop at anything that may be asbestos: sampling is licensed work. Local rules govern.',
  }),
})

/** The lead and asbestos check: asked always, said when something painted is disturbed in a house that may hold lead paint. */
export function oldPaint(context: PlanContext, built: Built): OldPaint {
  const limitYear = context.figures.number('lead.year')
  const mayHoldLead = !isTested(context, limitYear)
  const out = stripOut(context, built)
  const scraped = built.mantel.breasts.some((b) => b.paintedFace > 0)
  const disturbs = out.area > 0 || scraped
  const messages = mayHoldLead && disturbs ? [said(context, out, limitYear)] : []
  return { mayHoldLead, disturbs, stripOut: out, messages }
}

/** Young enough, or tested. The test is only asked about in a house that is old or of unknown age. */
function isTested(context: PlanContext, limitYear: number): boolean {
  const year = context.settle.measured(houseYear, undefined, () => ({
    value: limitYear - 1,
    because: 'not known: treated as old',
  }))
  if (year.value >= limitYear) return true
  const tested = context.settle.measured(leadTested, undefined, () => ({
    value: false,
    because: 'paint that is not tested is handled as lead paint',
  }))
  return tested.value
}

function said(context: PlanContext, out: StripOut, limitYear: number): Message {
  const limit = context.figures.number('lead.minor-area')
  const area = areaWords(context, out.area)
  const what = out.area > 0 ? area : 'washing and drilling the masonry'
  const values = { area, what, limit: areaWords(context, limit), year: String(limitYear) }
  if (out.area <= limit + HAIR) {
    return raise(paintMayHoldLead, { about: questionKey('job', leadTested), place: 'house' }, values)
  }
  const keep = {
    says: 'keep the baseboard',
    answers: [{ key: questionKey('job', baseboardFate), value: 'keep' }],
  }
  return raise(overMinorWork, { about: questionKey('job', leadTested), place: 'house', fixes: [keep] }, values)
}

/** Square metres lost in adding machine numbers: exactly the limit is within it. */
const HAIR = 1e-9

/** Two decimals: the limit is a small number. */
const areaWords = (context: PlanContext, area: Area | number): string =>
  context.show.units === 'inch' ? `${(area / SQUARE_METRES_PER_SQUARE_FOOT).toFixed(2)} sq ft` : `${area.toFixed(2)} m²`
