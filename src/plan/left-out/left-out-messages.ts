import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const crownReturnsLeftOut = messageKind<Record<string, never>>({
  code: 'N42',
  weight: 'note',
  source: PRACTICE,
  says: () => ({
    short: 'New returns for the crown that is cut back are not planned.',
    why: 'The cut ends of the moulding show beside the boxes.',
    todo: 'Measure the moulding and make its returns on site, from the piece that comes off.',
  }),
})

export const levellersLeftOut = messageKind<Record<string, never>>({
  code: 'N43',
  weight: 'note',
  source: PRACTICE,
  says: () => ({
    short: 'The plinth stands on packers; screw feet are not planned.',
    why: 'Packers carry the whole frame and cost nothing; feet need their own height and room.',
    todo: 'For screw feet make the plinth frame lower by their least height.',
  }),
})
