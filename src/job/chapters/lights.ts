import type { Look } from '../../things/field.ts'
import { choiceField, lengthsField, numberField, range } from '../entries.ts'

const at = { chapter: 'hardware', section: 'choices', each: 'job' } as const

export const lights = choiceField(
  {
    ...at,
    id: 'lights',
    short: 'strip lights',
    asks: () => 'Where do you want strip lights?',
    why: 'Their grooves and cable holes are made before anything is painted.',
    help: 'Low-voltage strips with a driver that stays reachable. The mains side is an electrician’s work.',
  },
  {
    none: 'nowhere',
    shelves: 'under the floating shelves',
    boxes: 'in the boxes',
    both: 'under the shelves and in the boxes',
  },
)
const lit = (look: Look) => (look(lights) ?? 'none') !== 'none'

export const lightProfile = lengthsField(
  {
    ...at,
    id: 'lightProfile',
    short: 'light profile',
    asks: () => 'How wide and how deep is the profile of the strip light, by its sheet?',
    why: 'Its groove is routed to it.',
    when: lit,
  },
  range(0.1, 3, 3, 75),
  { least: 2, most: 2, labels: ['width', 'depth'] },
)
export const lightMount = choiceField(
  {
    ...at,
    id: 'lightMount',
    short: 'light fixed',
    asks: () => 'Is the light’s profile let into the wood, or fixed on its face?',
    why: 'A groove leaves less wood; what is left must hold.',
    when: lit,
  },
  { groove: 'let into a groove', surface: 'on the face' },
)
export const lightPlace = choiceField(
  {
    ...at,
    id: 'lightPlace',
    short: 'light runs',
    asks: () => 'Does the light run along the front or along the back?',
    why: 'At the front it lights what stands there, at the back it washes the wall.',
    when: lit,
  },
  { front: 'along the front', back: 'along the back' },
)
export const lightWatts = numberField(
  {
    ...at,
    id: 'lightWatts',
    short: 'light power',
    asks: () => 'How many watts does a metre of the strip draw, by its sheet?',
    why: 'The driver is chosen by it.',
    when: lit,
  },
  'W/m',
  1,
  40,
)
export const lightDriver = choiceField(
  {
    ...at,
    id: 'lightDriver',
    short: 'light driver',
    asks: () => 'Where does the driver of the lights stay reachable?',
    why: 'Drivers wear out before the light does: nothing is built over one.',
    when: lit,
  },
  { box: 'in a box, behind its doors', elsewhere: 'elsewhere, within reach' },
)

export const LIGHT_FIELDS = [lights, lightProfile, lightMount, lightPlace, lightWatts, lightDriver] as const
