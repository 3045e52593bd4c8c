import { codeOptions } from '../../kinds/fuel/code-rules.ts'
import { FUELS } from '../../kinds/fuel/list.ts'
import { optionsOf } from '../../kinds/options.ts'
import type { Look } from '../../things/field.ts'
import { choiceField, from0, lengthField, lengthsField, textField, yesNoField } from '../entries.ts'
import { breastDevices } from './wall-devices.ts'

const at = { chapter: 'firebox', section: 'facts', each: ['breast'] } as const

export const fuel = choiceField(
  {
    ...at,
    id: 'fuel',
    missing: 'hold',
    short: 'fuel',
    asks: () => 'What burns in the opening?',
    why: 'It decides which rule keeps wood away from the heat.',
    help: 'If an appliance stands in it, its manual governs.',
  },
  optionsOf(FUELS),
)
const burns = (look: Look) => look(fuel) !== undefined && look(fuel) !== 'none'
const byManual = (look: Look) => FUELS[look(fuel) ?? 'none'].governedBy === 'manual'
const needsHearth = (look: Look) => FUELS[look(fuel) ?? 'none'].flame !== 'none'
const heatsMasonry = (look: Look) => FUELS[look(fuel) ?? 'none'].heatsMasonry

export const opening = lengthsField(
  {
    ...at,
    id: 'opening',
    missing: 'hold',
    short: 'opening',
    asks: () => 'Where is the opening: from the breast’s left edge, above the floor, how wide, how high?',
    why: 'Every wooden piece near it is checked against it.',
  },
  from0(300, 8000),
  { least: 4, most: 4, labels: ['from the left', 'above floor', 'width', 'height'] },
)
export const clearanceRule = choiceField(
  {
    ...at,
    id: 'clearanceRule',
    section: 'choices',
    short: 'code',
    asks: () => 'Which code applies to wood near a fireplace here?',
    why: 'It is never guessed from the units; the local code and its inspector decide.',
    help: 'Ask the local building department. Each answer stands for what one text prints; until one is known all of them count, so that the strictest does.',
    when: heatsMasonry,
  },
  codeOptions(),
)
export const realMasonry = yesNoField({
  ...at,
  id: 'realMasonry',
  missing: 'hold',
  short: 'real masonry',
  asks: () => 'Is the breast real masonry, with a lined flue?',
  why: 'Masonry grows hot at its sides, and the rule for it does not hold for a framed or factory-built fireplace.',
  when: heatsMasonry,
})
export const linings = lengthsField(
  {
    ...at,
    id: 'linings',
    missing: 'assume',
    short: 'masonry beside',
    asks: () => 'How thick is the masonry beside the firebox (left, right) and beside the flue (left, right)?',
    why: 'Wood against the side of a breast keeps its distance from the hot lining behind it.',
    help: 'From the inside of the lining to the side of the breast, the flue at shelf height: look up with a lamp, or ask the sweep. Left out: the firebox is taken to end at the opening’s edge, and the flue is asked about.',
    when: (look) => heatsMasonry(look) && look(realMasonry) !== false,
  },
  from0(240, 6000),
  { least: 4, most: 4, labels: ['firebox left', 'firebox right', 'flue left', 'flue right'] },
)
export const hearth = lengthsField(
  {
    ...at,
    id: 'hearth',
    missing: 'hold',
    short: 'hearth',
    asks: () => 'How far does the hearth reach: in front, left of the opening, right of it?',
    why: 'No wood stands on the floor inside the hearth zone.',
    when: needsHearth,
  },
  from0(120, 3000),
  { least: 3, most: 3, labels: ['front', 'left', 'right'] },
)
export const manualModel = textField(
  {
    ...at,
    id: 'manualModel',
    short: 'manual',
    asks: () => 'Which appliance is it: model, and edition of its manual?',
    why: 'Its manual governs the wood round it; without it no packet is written.',
    when: byManual,
  },
  120,
  true,
)
export const manualClearances = lengthsField(
  {
    ...at,
    id: 'manualClearances',
    missing: 'hold',
    short: 'manual clearances',
    asks: () => 'What does the manual keep clear: above, at each side, and how far may wood stand out there?',
    why: 'The larger of manual and code counts.',
    when: byManual,
  },
  from0(120, 3000),
  { least: 3, most: 3, labels: ['above', 'sides', 'stands out'] },
)
export const face = choiceField(
  {
    ...at,
    id: 'face',
    short: 'face',
    asks: () => 'What is the face of the breast?',
    why: 'Rough faces take more paint and a wider joint.',
  },
  {
    smooth: 'smooth block, render or plaster',
    brick: 'brick',
    deep: 'brick or stone with deep joints',
    rubble: 'rubble stone',
  },
)
export const paintFace = yesNoField({
  ...at,
  id: 'paintFace',
  section: 'choices',
  short: 'paint masonry',
  asks: () => 'Is the masonry face painted?',
  why: 'It is washed, primed and painted before any wood stands against it.',
})
export const paintHeat = lengthField(
  {
    ...at,
    id: 'paintHeat',
    section: 'choices',
    missing: 'assume',
    short: 'paint off the fire',
    asks: () => 'How far from the opening must the masonry paint stay, by the sheet of its tin?',
    why: 'No paint goes inside the firebox, and none where the face grows hotter than its tin allows.',
    help: '0 when the sheet names no distance, or the paint is made for that heat.',
    when: (look) => look(paintFace) !== false && burns(look),
  },
  from0(40, 1000),
)
export const tv = yesNoField({
  ...at,
  id: 'tv',
  section: 'choices',
  short: 'screen',
  asks: () => 'Does a screen hang on the breast?',
  why: 'Heat, cables and the mantel under it.',
})
export const tvPlace = lengthsField(
  {
    ...at,
    id: 'tvPlace',
    section: 'choices',
    missing: 'hold',
    short: 'screen place',
    asks: () => 'Where is the screen: from the breast’s left edge, above the floor, how wide, how high?',
    why: 'It stays inside the breast and clear of the mantel.',
    when: (look) => look(tv) === true,
  },
  from0(300, 8000),
  { least: 4, most: 4, labels: ['from the left', 'above floor', 'width', 'height'] },
)
export const tvHeat = lengthField(
  {
    ...at,
    id: 'tvHeat',
    missing: 'hold',
    short: 'screen heat limit',
    asks: () => 'How far above the opening must the screen be, by its own manual?',
    why: 'A fire below heats what hangs above it.',
    when: (look) => look(tv) === true && burns(look),
  },
  from0(120, 3000),
)
export const cable = choiceField(
  {
    ...at,
    id: 'cable',
    section: 'choices',
    short: 'cable',
    asks: () => 'How does the screen’s cable run?',
    why: 'Low voltage only; mains by an electrician.',
    when: (look) => look(tv) === true,
  },
  {
    'through-mantel': 'through the mantel top, along inside it and out of its end',
    'surface-duct': 'in a duct on the face',
    'breast-void': 'down inside a breast that is framed, with no flue in it',
  },
)
export const cableTo = choiceField(
  {
    ...at,
    id: 'cableTo',
    section: 'choices',
    short: 'cable goes to',
    asks: () => 'Where does the screen’s cable go?',
    why: 'Into a box beside the breast it needs a hole through the counter and the box top.',
    when: (look) => look(tv) === true,
  },
  {
    breast: 'a low-voltage point on the breast',
    left: 'the nearest box at the left',
    right: 'the nearest box at the right',
  },
)

export const FIREBOX_FIELDS = [
  fuel,
  opening,
  clearanceRule,
  realMasonry,
  linings,
  hearth,
  manualModel,
  manualClearances,
  face,
  paintFace,
  paintHeat,
  tv,
  tvPlace,
  tvHeat,
  cable,
  cableTo,
  breastDevices,
] as const
