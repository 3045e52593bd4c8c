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

export const readyMadeLeftOut = messageKind<Record<string, never>>({
  code: 'N44',
  weight: 'note',
  source: PRACTICE,
  says: () => ({
    short: 'Boxes are asked for to measure; ready-made sizes are not compared.',
    why: 'Stock boxes come in steps and leave wider fillers.',
    todo: 'Ask the shop for its stock sizes too, and type those that suit under box widths.',
  }),
})

export const breakEvenLeftOut = messageKind<{ readonly bought: string }>({
  code: 'N45',
  weight: 'note',
  source: PRACTICE,
  says: ({ bought }) => ({
    short: `Bought in: ${bought}; at which quote buying pays is not worked out yet.`,
    why: 'Making and buying differ in hours, materials and dates.',
    todo: 'Change the answer to “make” and back: the effect line shows price and finish of both.',
  }),
})
