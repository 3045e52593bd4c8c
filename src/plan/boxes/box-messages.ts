import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const boxDoesNotTilt = messageKind<{ height: string; depth: string; room: string; largest: string }>({
  code: 'S4',
  weight: 'stop',
  source: 'geometry: height² + depth² against the ceiling less its play',
  says: (v) => ({
    short: `A box ${v.height} high and ${v.depth} deep cannot be stood up under this ceiling.`,
    why: `It turns on its lower edge and then goes up on the plinth; there is room for ${v.room}.`,
    todo: `The highest that works is ${v.largest}.`,
  }),
})

export const boxTooShallow = messageKind<{ depth: string; least: string; short: string }>({
  code: 'S5',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `The boxes would be only ${v.depth} deep; the least is ${v.least}.`,
    why: 'The shallower return, the doors and the space behind the box leave no more.',
    todo: `It is short by ${v.short}: let the boxes stand proud of the breast, or build none here.`,
  }),
})

export const boxesStandProud = messageKind<{ by: string }>({
  code: 'C4',
  weight: 'confirm',
  source: PRACTICE,
  says: (v) => ({
    short: `The door faces stand ${v.by} in front of the shallower return.`,
    why: 'The end of the run shows past the breast and needs a finished face there.',
    todo: 'Say yes if that is wanted, or make the boxes shallower.',
  }),
})

export const widthsDoNotFill = messageKind<{ total: string; run: string; difference: string; which: string }>({
  code: 'S20',
  weight: 'stop',
  source: 'geometry',
  says: (v) => ({
    short: `The box widths add up to ${v.total}; the run is ${v.run}.`,
    why: 'Together the boxes fill the run exactly, or the fillers no longer fit.',
    todo: `They are ${v.difference} too ${v.which}: change one width by that.`,
  }),
})

export const looseShelfSags = messageKind<{ span: string; most: string }>({
  code: 'S13',
  weight: 'stop',
  source: 'Architectural Woodwork Standards, 1st edition, 2009, 1.2.21: 40 lb/sq ft, span/144',
  says: (v) => ({
    short: `A loose shelf would span ${v.span}; without a lip this panel carries ${v.most}.`,
    why: 'Loaded with 40 lb a square foot (1.915 kPa) it would sag more than the span over 144, also with the deepest lip under its front edge.',
    todo: 'Take more boxes in this run, a thicker carcass panel, or no loose shelves.',
  }),
})
