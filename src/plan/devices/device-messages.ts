import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const cutOutMeetsPart = messageKind<{ device: string; part: string; missing: string; todo: string }>({
  code: 'S6',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `The cut-out for the ${v.device} meets the ${v.part}: ${v.missing} is missing.`,
    why: 'A cut-out stays clear of every panel, with wood left between; a device is never covered by one.',
    todo: v.todo,
  }),
})

export const deviceBuried = messageKind<{ device: string; low: string; foot: string }>({
  code: 'S7',
  weight: 'stop',
  source: 'NEC 314.29 for electrical boxes; others common practice, no source',
  says: (v) => ({
    short: `The ${v.device} starts at ${v.low}, under the boxes’ foot at ${v.foot}.`,
    why: 'It would be buried in the plinth, out of reach.',
    todo: `Have it moved or raised above ${v.foot} by a licensed trade, and set what becomes of it to "move".`,
  }),
})

export const deviceCovered = messageKind<{ device: string; trade: string }>({
  code: 'S7',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `The ${v.device} would be covered.`,
    why: 'Air inlets, taps and grilles keep their free opening and stay in reach.',
    todo: `Set what becomes of it to "cut through" with the free opening its maker asks for, or have a ${v.trade} move it.`,
  }),
})

export const nailerCrossed = messageKind<{ device: string; box: string; left: string; todo: string }>({
  code: 'N7',
  weight: 'note',
  source: PRACTICE,
  says: (v) => ({
    short: `The ${v.device} crosses the nailer of box ${v.box}; ${v.left} of its height stays.`,
    why: 'The nailer holds the box to the wall.',
    todo: v.todo,
  }),
})
