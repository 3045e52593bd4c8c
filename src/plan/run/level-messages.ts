import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const plinthHigh = messageKind<{ plinth: string; high: string }>({
  code: 'C3',
  weight: 'confirm',
  source: PRACTICE,
  says: (v) => ({
    short: `The boxes start ${v.plinth} above the floor.`,
    why: `Over ${v.high} a plinth looks like a step.`,
    todo: 'Cut the baseboard back along the boxes and start them lower, or say yes.',
  }),
})

export const kickRaised = messageKind<{ asked: string; plinth: string; baseboard: string }>({
  code: 'N16',
  weight: 'note',
  source: PRACTICE,
  says: (v) => ({
    short: `The boxes start at ${v.plinth}, not at ${v.asked}.`,
    why: `The kept baseboard is ${v.baseboard} high and a box stands above it.`,
    todo: 'Cut the baseboard back along the boxes to start them lower.',
  }),
})

export const floorFalls = messageKind<{ drop: string; noted: string }>({
  code: 'N6',
  weight: 'note',
  source: PRACTICE,
  says: (v) => ({
    short: `The floor falls ${v.drop} under this run.`,
    why: `Over ${v.noted} the kick plate is visibly wider at one end.`,
    todo: 'Show it to the client before the kick plate is cut.',
  }),
})

export const plinthTooShallow = messageKind<{ depth: string; least: string; setBack: string }>({
  code: 'S20',
  weight: 'stop',
  source: 'geometry',
  says: (v) => ({
    short: `The plinth under the boxes would be only ${v.depth} deep.`,
    why: `Its two rails alone take ${v.least}; a shallow plinth lets the boxes tip forward.`,
    todo: `Set the kick plate back less than ${v.setBack}.`,
  }),
})
