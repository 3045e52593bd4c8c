import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const mantelPastBreast = messageKind<{ length: string; breast: string; longest: string }>({
  code: 'C7',
  weight: 'confirm',
  source: PRACTICE,
  says: (v) => ({
    short: `A mantel ${v.length} long does not stay inside a breast ${v.breast} wide.`,
    why: 'Its ends then stand beyond the breast, where shelves and boxes of the alcoves end.',
    todo: `Make it ${v.longest} or shorter, or say yes if it is meant to stand past the breast.`,
  }),
})

export const mantelTooShallow = messageKind<{ what: string; is: string; least: string }>({
  code: 'S9',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `A mantel ${v.is} ${v.what} cannot be built with this panel.`,
    why: 'The ledger on the wall and a board before it need their room.',
    todo: `Make it ${v.least} ${v.what} or more, or use a thinner panel.`,
  }),
})

export const deepMantelLow = messageKind<{ piece: string; is: string; wanted: string; by: string }>({
  code: 'N24',
  weight: 'note',
  source:
    'a table passed around among fitters (hunker.com; origin not found), stricter than the codes: a caution, no rule',
  says: (v) => ({
    short: `A mantel this deep hangs ${v.is} over the opening; many fitters keep it ${v.wanted} over.`,
    why: `The ${v.piece} meets the code chosen; deep wood still gathers heat and smoke under it.`,
    todo: `Raise it by ${v.by} where the room allows, or leave it and feel it after the first long fire.`,
  }),
})

export const legInHearthZone = messageKind<{
  legs: string
  reach: string
  front: string
  side: string
  rule: string
}>({
  code: 'S12',
  weight: 'stop',
  source: 'the code chosen, as named in the message; the local code and its inspector decide',
  says: (v) => ({
    short: `The ${v.legs} stands on the floor within the hearth zone.`,
    why: `No wood stands on the floor within ${v.front} in front of this opening and ${v.side} beside it; a leg may stand on the hearth itself. Rule: ${v.rule}.`,
    todo: `Have the hearth reach ${v.reach} further, or leave the legs out.`,
  }),
})

export const legNotBuildable = messageKind<{ what: string; is: string; bound: string; todo: string }>({
  code: 'S9',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `Mantel legs ${v.is} ${v.what} cannot be built: ${v.bound}.`,
    why: 'A leg’s front board is one panel thick, and the leg stays under the frieze.',
    todo: v.todo,
  }),
})
