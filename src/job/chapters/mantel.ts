import type { Look } from '../../things/field.ts'
import { countField, lengthField, range, yesNoField } from '../entries.ts'

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

export const MANTEL_FIELDS = [
  mantel,
  mantelLength,
  mantelDepth,
  mantelFrieze,
  mantelLayers,
  mantelThickness,
  mantelUnderside,
] as const
