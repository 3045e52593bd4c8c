import { messageKind } from '../../things/message.ts'

const GOVERN = 'Local code and licensed practice govern.'

interface Disturbed extends Readonly<Record<string, number | string>> {
  readonly area: string
  /** The area, or the work where nothing comes off. */
  readonly what: string
  readonly limit: string
  readonly year: string
}

export const overMinorWork = messageKind<Disturbed>({
  code: 'S19',
  weight: 'stop',
  source:
    '40 CFR 745.83 (minor repair: up to 6 square feet of painted surface in a room, all jobs of 30 days together); local rules govern elsewhere',
  says: ({ area, limit, year }) => ({
    short: `Old paint: ${area} would be disturbed, ${limit} is the most for minor work.`,
    why: `The house is treated as built before ${year} and the paint is not tested: it may hold lead. A part taken off counts with its whole painted surface.`,
    todo: `Have the paint tested and answer so, keep some of it in place, or name the certified firm and renovator who does this work. ${GOVERN}`,
  }),
})

export const paintDemolished = messageKind<{ readonly pieces: string; readonly year: string }>({
  code: 'S19',
  weight: 'stop',
  source: '40 CFR 745.83 (minor repair excludes demolition of painted surfaces); local rules govern elsewhere',
  says: ({ pieces, year }) => ({
    short: `Old paint would be broken out: ${pieces}.`,
    why: `The house is treated as built before ${year} and the paint is not tested. What is glued or set in mortar does not come away whole, and breaking a painted surface up is never minor work.`,
    todo: `Have the paint tested and answer so, leave the piece in place, or name the certified firm and renovator who does this work. ${GOVERN}`,
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

export const leadFirmNamed = messageKind<{ readonly area: string; readonly firm: string }>({
  code: 'C15',
  weight: 'confirm',
  source: '40 CFR 745.81 and 745.85 (certified firm, certified renovator, work practices)',
  says: ({ area, firm }) => ({
    short: `Old paint (${area}) is disturbed by a certified renovator.`,
    why: `Named for it: ${firm}. The lead-safe list stands in the install sequence; the renovator answers for it.`,
    todo: `Confirm that both certificates are valid on the days of this work and that the client has the lead pamphlet. ${GOVERN}`,
  }),
})

export const oldPieceMayHoldLead = messageKind<{ readonly pieces: string; readonly year: string }>({
  code: 'C15',
  weight: 'confirm',
  source: 'common practice, no source; 40 CFR 745 covers the house, not what was brought into it',
  says: ({ pieces, year }) => ({
    short: `Painted pieces older than the house may hold lead: ${pieces}.`,
    why: `They are from before ${year}, and their paint is not tested.`,
    todo: `Confirm that they are worked as lead paint: taken off whole, wet, no sanding, no torch, wrapped before they leave the room. ${GOVERN}`,
  }),
})

export const mayHoldAsbestos = messageKind<{ readonly what: string; readonly year: string }>({
  code: 'C15',
  weight: 'confirm',
  source: 'common practice, no source; the year: Asbestos (Prohibitions) (Amendment) Regulations 1999, Great Britain',
  says: ({ what, year }) => ({
    short: `What comes off may hold asbestos: ${what}.`,
    why: `It is from before ${year}, or nobody knows its age. Fibres set free are not seen and not felt.`,
    todo: `Confirm that it was looked at, and sampled by a licensed firm where in doubt, before anything is disturbed. Work stops at the first such board, rope or coating. ${GOVERN}`,
  }),
})
