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

export const hearthNotMeasured = messageKind<{ front: string; side: string }>({
  code: 'C14',
  weight: 'confirm',
  source: 'IRC R1001.10 (2006 to 2021)',
  says: (v) => ({
    short: 'The hearth is not measured.',
    why: `No wood may stand on the floor within ${v.front} in front of this opening and ${v.side} beside it.`,
    todo: 'Measure how far the hearth reaches in front and to each side, and enter it.',
  }),
})

export const hearthTooSmall = messageKind<{ front: string; side: string; short: string }>({
  code: 'C14',
  weight: 'confirm',
  source: 'IRC R1001.10 (2006 to 2021); the local code, its inspector and the appliance’s manual decide',
  says: (v) => ({
    short: `The hearth is smaller than the code asks: ${v.short}.`,
    why: `Nothing that burns lies on the floor within ${v.front} in front of this opening and ${v.side} beside it; wood flooring or carpet there can catch from a falling ember.`,
    todo: 'Have the hearth extended, or the floor finish inside the zone taken up and replaced by stone or tile, before a fire is lit. Say yes once the inspector accepts it as it is.',
  }),
})

export const codeNotKnown = messageKind<{ rules: string }>({
  code: 'C14',
  weight: 'confirm',
  source: 'local adoption of the model codes',
  says: (v) => ({
    short: 'It is not known which code applies to wood near this fireplace.',
    why: `Until then the strictest of these counts: ${v.rules}. A local code may ask for more.`,
    todo: 'Ask the local building department, then choose the code.',
  }),
})

export const woodAgainstBreast = messageKind<{ bays: string }>({
  code: 'C12',
  weight: 'confirm',
  source: 'IRC R1001.11 exceptions 2 and 3 (2012), R1001.15',
  says: (v) => ({
    short: `Wood of the ${v.bays} stands against the side of the chimney breast.`,
    why: 'Wood stays 2 in (51 mm) off the sides of a masonry fireplace, unless it is 12 in (306 mm) from the inside of the firebox lining, or higher up of the flue lining.',
    todo: 'Measure the wall of masonry between lining and alcove. Thinner than 12 in (306 mm): leave the gap, with a filler that is not wood.',
  }),
})
