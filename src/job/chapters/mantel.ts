import type { Look } from '../../things/field.ts'
import { countField, from0, lengthField, range, yesNoField } from '../entries.ts'

const at = { chapter: 'mantel', section: 'choices', each: ['breast'] } as const

export const mantel = yesNoField({
  ...at,
  id: 'mantel',
  short: 'mantel',
  asks: () => 'Does the breast get a mantel?',
  why: 'A hollow beam of panel with a thicker top.',
})
const wanted = (look: Look) => look(mantel) === true

export const mantelLength = lengthField(
  {
    ...at,
    id: 'mantelLength',
    short: 'length',
    asks: () => 'How long is the mantel top?',
    why: 'It stays within the breast.',
    when: wanted,
  },
  range(12, 240, 300, 6000),
)
export const mantelDepth = lengthField(
  {
    ...at,
    id: 'mantelDepth',
    short: 'depth',
    asks: () => 'How far does the mantel top stand out?',
    why: 'The further wood stands out over a fire, the higher it must be.',
    when: wanted,
  },
  range(2, 24, 50, 600),
)
export const mantelUnderside = lengthField(
  {
    ...at,
    id: 'mantelUnderside',
    short: 'underside',
    asks: () => 'How high above the floor is the underside of the mantel?',
    why: 'The further wood stands out over a fire, the higher it must be.',
    when: wanted,
  },
  range(6, 120, 150, 3000),
)
export const mantelFrieze = lengthField(
  {
    ...at,
    id: 'mantelFrieze',
    short: 'frieze',
    asks: () => 'How high is the mantel’s frieze, under its top?',
    why: 'The beam you see from the room.',
    when: wanted,
  },
  range(1, 24, 25, 600),
)
export const mantelLayers = countField(
  {
    ...at,
    id: 'mantelLayers',
    short: 'top layers',
    asks: () => 'How many layers of panel make the mantel top?',
    why: 'Two glued layers look like a slab.',
    when: wanted,
  },
  1,
  4,
)
export const mantelThickness = lengthField(
  {
    ...at,
    id: 'mantelThickness',
    short: 'mantel panel',
    asks: () => 'How thick is the mantel’s panel, by the caliper?',
    why: 'Frieze, ends, soffit and top layers are cut from it.',
    when: wanted,
  },
  range(0.4, 1.5, 9, 40),
)

export const mantelLegs = yesNoField({
  ...at,
  id: 'mantelLegs',
  short: 'legs',
  asks: () => 'Do legs stand under the mantel, one at each side of the opening?',
  why: 'Wood beside a fire is nearer to it than the mantel: each leg is checked by itself.',
  when: wanted,
})
const withLegs = (look: Look) => wanted(look) && look(mantelLegs) === true

export const legWidth = lengthField(
  {
    ...at,
    id: 'legWidth',
    short: 'leg width',
    asks: () => 'How wide is a leg of the mantel?',
    why: 'Its outer edge stands under the end of the frieze; the wider it is, the nearer to the opening.',
    when: withLegs,
  },
  range(1.5, 14, 40, 350),
)
export const legDepth = lengthField(
  {
    ...at,
    id: 'legDepth',
    short: 'leg stands out',
    asks: () => 'How far do the legs stand out of the face?',
    why: 'The nearer wood stands to a fire, the less it may stand out.',
    help: 'Little more than a panel’s thickness gives a flat board; more gives a leg with two sides.',
    when: withLegs,
  },
  range(0.4, 8, 9, 200),
)
export const hearthTop = lengthField(
  {
    ...at,
    id: 'hearthTop',
    section: 'facts',
    missing: 'assume',
    short: 'hearth height',
    asks: () => 'How high does the hearth stand above the highest floor point?',
    why: 'A leg that stands on the hearth is shorter by it.',
    help: '0 for a hearth level with the floor. Left out: level.',
    when: withLegs,
  },
  from0(24, 600),
)

export const MANTEL_FIELDS = [
  mantel,
  mantelLength,
  mantelDepth,
  mantelFrieze,
  mantelLayers,
  mantelThickness,
  mantelUnderside,
  mantelLegs,
  legWidth,
  legDepth,
  hearthTop,
] as const
