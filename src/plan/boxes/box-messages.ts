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

export const boxTooShallow = messageKind<{ depth: string; least: string; short: string; way: string }>({
  code: 'S5',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `The boxes would be only ${v.depth} deep; the least is ${v.least}.`,
    why: 'The shallower return, the doors and the space behind the box leave no more.',
    todo: `It is short by ${v.short}: ${v.way}.`,
  }),
})

export const boxesStandProud = messageKind<{ by: string }>({
  code: 'C4',
  weight: 'confirm',
  source: PRACTICE,
  says: (v) => ({
    short: `The door faces stand ${v.by} in front of the shallower return.`,
    why: 'The edges of the doors show past the end of the return, and a counter ends behind them.',
    todo: 'Say yes if that is wanted, or make the boxes shallower.',
  }),
})

export const boxesPastReturn = messageKind<{ by: string; most: string; withDoors: string }>({
  code: 'S5',
  weight: 'stop',
  source: 'geometry',
  says: (v) => ({
    short: `The box fronts would stand ${v.by} in front of the shallower return.`,
    why: 'Filler, kick plate and counter end at the return’s wall; past its edge there is none, and a finished end for boxes that stand out there is not planned.',
    todo: `The deepest boxes whose doors stay behind it are ${v.withDoors}; whose fronts do, ${v.most}.`,
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

export const partitionHasNoRoom = messageKind<{ what: string; box: string; room: string; todo: string }>({
  code: 'S23',
  weight: 'stop',
  source: 'geometry',
  says: (v) => ({
    short: `The ${v.what} in box ${v.box} has no place there.`,
    why: `It stays ${v.room} clear of every side, divider and fixed shelf beside it, inside a box without drawers.`,
    todo: v.todo,
  }),
})
