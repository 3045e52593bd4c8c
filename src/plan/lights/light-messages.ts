import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const grooveTooDeep = messageKind<{
  readonly where: string
  readonly depth: string
  readonly panel: string
  readonly least: string
  readonly most: string
}>({
  code: 'S27',
  weight: 'stop',
  source: PRACTICE,
  says: ({ where, depth, panel, least, most }) => ({
    short: `A groove ${depth} deep leaves too little of a panel of ${panel}.`,
    why: `Where: ${where}. ${least} must stay over a groove, or it shows through and breaks.`,
    todo: `Take a profile at most ${most} deep, a thicker panel, or fix the profile on the face.`,
  }),
})

export const noPlaceForCable = messageKind<{ readonly where: string; readonly hole: string; readonly edge: string }>({
  code: 'S28',
  weight: 'stop',
  source: PRACTICE,
  says: ({ where, hole, edge }) => ({
    short: `There is no place for the lights’ cable hole of ${hole}: ${where}.`,
    why: `It needs ${edge} of wood to every edge, cut-out and other part, and a cleat keeps half its height.`,
    todo: 'Make the piece larger, move the cut-out, or leave this light out.',
  }),
})

export const driverOutside = messageKind<{ readonly where: string; readonly watts: string }>({
  code: 'C19',
  weight: 'confirm',
  source: `${PRACTICE}; NEC 314.29 asks the same of boxes: reachable without removing any part of the building`,
  says: ({ where, watts }) => ({
    short: `The driver of the lights (${where}, ${watts}) stands outside the boxes.`,
    why: 'Drivers wear out before the light does, and grow warm: one that is built over is lost.',
    todo: 'Confirm that it has a place within reach, with air round it, that nothing is built over.',
  }),
})

export const mainsByElectrician = messageKind<{ readonly where: string; readonly watts: string }>({
  code: 'N27',
  weight: 'note',
  source: PRACTICE,
  says: ({ where, watts }) => ({
    short: `Lights: you lay the low-voltage side only; the mains side of ${watts} is the electrician’s.`,
    why: `Where: ${where}. Each driver needs a switched point beside it that stays reachable.`,
    todo: 'Add its outlet to the outlets of the bay, so that its cut-out is planned. In a wall only cable rated for it. Local code and licensed practice govern.',
  }),
})
