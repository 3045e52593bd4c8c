import { messageKind } from '../../things/message.ts'

export const manualMissing = messageKind<{ fuel: string; missing: string }>({
  code: 'S15',
  weight: 'stop',
  source: 'IRC R1004.1 (2018 to 2024): installed to the conditions of the listing; for other appliances their manual',
  says: (v) => ({
    short: `The manual of the ${v.fuel} is still to be entered: ${v.missing}.`,
    why: 'Each model keeps its own distances; no general rule replaces them.',
    todo: 'Read model and edition off the manual, and the clearances above, at the sides, and how far wood may stand out.',
  }),
})

export const notMasonry = messageKind<{ fuel: string }>({
  code: 'S15',
  weight: 'stop',
  source: 'IRC R1004.1 (2018 to 2024)',
  says: (v) => ({
    short: `The breast is not real masonry, so the rule for a ${v.fuel} does not hold.`,
    why: 'A framed or factory-built fireplace is governed by its own manual.',
    todo: 'Choose the appliance under fuel and enter its manual’s clearances.',
  }),
})

export const masonryNotConfirmed = messageKind<{ fuel: string }>({
  code: 'C14',
  weight: 'confirm',
  source: 'IRC R1001, R1003.18 (masonry fireplaces and chimneys only)',
  says: (v) => ({
    short: 'Nobody has confirmed that the breast is real masonry with a lined flue.',
    why: `Which distances wood keeps from a ${v.fuel}, and from the sides of the breast, depends on it.`,
    todo: 'Look from the roof, the cellar or the attic, or have a mason look; then answer it.',
  }),
})

export const hearthNotMeasured = messageKind<{ front: string; side: string; rule: string }>({
  code: 'C14',
  weight: 'confirm',
  source: 'the code chosen, as named in the message',
  says: (v) => ({
    short: 'The hearth is not measured.',
    why: `No wood may stand on the floor within ${v.front} in front of this opening and ${v.side} beside it. Rule: ${v.rule}.`,
    todo: 'Measure how far the hearth reaches in front and to each side, and enter it.',
  }),
})

export const hearthTooSmall = messageKind<{ front: string; side: string; short: string; rule: string }>({
  code: 'C14',
  weight: 'confirm',
  source: 'the code chosen, as named in the message; the local code, its inspector and the appliance’s manual decide',
  says: (v) => ({
    short: `The hearth is smaller than the code asks: ${v.short}.`,
    why: `Nothing that burns lies on the floor within ${v.front} in front of this opening and ${v.side} beside it; wood flooring or carpet there can catch from a falling ember. Rule: ${v.rule}.`,
    todo: 'Have the hearth extended, or the floor finish inside the zone taken up and replaced by stone or tile, before a fire is lit. Say yes once the inspector accepts it as it is.',
  }),
})

export const codeNotKnown = messageKind<{ rules: string }>({
  code: 'C14',
  weight: 'confirm',
  source: 'local adoption of the model codes',
  says: (v) => ({
    short: 'It is not known which code applies to wood near this fireplace.',
    why: `Until then each piece meets all of these, so that the strictest counts: ${v.rules}. A local code may ask for more.`,
    todo: 'Ask the local building department, then choose the code.',
  }),
})

export const codeNeedsReading = messageKind<{ code: string; asks: string }>({
  code: 'C14',
  weight: 'confirm',
  source: 'as named in the message; the local code, the appliance’s manual and licensed practice govern',
  says: (v) => ({
    short: `Not everything used here for ${v.code} was read in its own text.`,
    why: v.asks,
    todo: 'Read the text that is in force, or have the inspector or the installer name the distances; say yes once they agree with the ones printed here.',
  }),
})
