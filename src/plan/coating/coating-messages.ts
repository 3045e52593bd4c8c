import { messageKind } from '../../things/message.ts'

/** A coating that may not be put on where it was planned. */
export const coatingNotHere = messageKind<{
  readonly coating: string
  readonly place: string
  readonly why: string
  readonly todo: string
}>({
  code: 'S17',
  weight: 'stop',
  source: 'common practice, no source; the safety data sheet of the product and local rules govern',
  says: ({ coating, place, why, todo }) => ({ short: `“${coating}” is not put on ${place}.`, why, todo }),
})

/** A coating put on in a way its sheet does not know. */
export const notByThatMethod = messageKind<{
  readonly coating: string
  readonly method: string
  readonly methods: string
}>({
  code: 'S22',
  weight: 'stop',
  source: 'common practice, no source; the sheet of the product says how it is put on',
  says: ({ coating, method, methods }) => ({
    short: `“${coating}” is not put on by ${method}.`,
    why: `It is made for: ${methods}.`,
    todo: `Put it on by ${methods}, or choose another coating.`,
  }),
})

/** Spraying where people live. */
export const sprayingOnSite = messageKind<{ readonly coating: string }>({
  code: 'C13',
  weight: 'confirm',
  source: 'common practice, no source; the safety data sheet of the product and local rules govern',
  says: ({ coating }) => ({
    short: `“${coating}” is to be sprayed in the client’s house.`,
    why: 'Spray mist goes through doors, is breathed by whoever lives there, and burns near a flame.',
    todo: 'Air to the outside with a fan, mask with the filter of the safety sheet, every flame and pilot light out, the neighbouring rooms sealed, nobody else in; or spray in the shop.',
  }),
})

/** Drying times of the trade stand until the tin is here. */
export const dryingFromTheTin = messageKind<{ readonly coatings: string }>({
  code: 'N14',
  weight: 'note',
  source: 'common practice, no source; the sheet of the product governs',
  says: ({ coatings }) => ({
    short: 'Films and drying times are general: check them against the sheet of each tin.',
    why: `No product sheet has been read for: ${coatings}. The days are planned with the usual times.`,
    todo: 'Read the sheet for least and most hours between coats at the temperature of the room; a longer wait moves the dates.',
  }),
})
