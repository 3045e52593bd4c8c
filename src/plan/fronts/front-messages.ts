import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const panelTooSmall = messageKind<{ what: string; panel: string; least: string }>({
  code: 'S9',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `The field of a ${v.what} would be only ${v.panel}.`,
    why: `Under ${v.least} either way a frame is all wood and no panel.`,
    todo: 'Make these slabs, or the frame narrower.',
  }),
})

export const leafTooThin = messageKind<{ thickness: string; least: string; cup: string }>({
  code: 'S9',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `A leaf ${v.thickness} thick is too thin for a hinge cup.`,
    why: `The cup is ${v.cup} deep and would show through.`,
    todo: `Use a panel of ${v.least} or more.`,
  }),
})

export const leafTooBigForHinges = messageKind<{ height: string; mass: string; mostHeight: string; mostMass: string }>({
  code: 'S9',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `A leaf ${v.height} high and ${v.mass} heavy is more than cup hinges carry.`,
    why: `Five hinges hold up to ${v.mostHeight} and ${v.mostMass}.`,
    todo: 'Take one more leaf for each box, or lower boxes.',
  }),
})

export const leafTooNarrow = messageKind<{ width: string; least: string }>({
  code: 'S9',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `A leaf would be only ${v.width} wide.`,
    why: `Hinge cups and a handle need ${v.least}.`,
    todo: 'Take fewer leaves for each box, or wider boxes.',
  }),
})

export const hingesDoNotLap = messageKind<{ overlay: string; least: string; most: string }>({
  code: 'S9',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `A leaf laps ${v.overlay} over its box side; hinges of the list lap ${v.least} to ${v.most}.`,
    why: 'How far it laps is the thickness of the side less the margin beside the leaf.',
    todo: 'Take another carcass panel, or put the overlay of a hinge you know into shared/hardware.json.',
  }),
})
