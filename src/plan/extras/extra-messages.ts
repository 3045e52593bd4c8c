import { messageKind } from '../../things/message.ts'

export const extrasAsGiven = messageKind<{ readonly pieces: string }>({
  code: 'N20',
  weight: 'note',
  source: 'common practice, no source',
  says: ({ pieces }) => ({
    short: `Pieces of your own are taken as you gave them: ${pieces}.`,
    why: 'They are cut, coated, carried and priced with the rest; nobody has checked that they fit, carry their load or keep clear of a fire.',
    todo: 'Measure them at the work before they are sawn. Near a fire the local code and the appliance’s manual govern.',
  }),
})
