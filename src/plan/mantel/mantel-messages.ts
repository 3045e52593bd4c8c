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
