import { coatingOptions } from '../../kinds/coating.ts'
import type { Look } from '../../things/field.ts'
import { choiceField, textField, yesNoField } from '../entries.ts'
import { sprayingWay } from './make-or-buy.ts'
import { bays } from './wall.ts'

const at = { chapter: 'finish', section: 'choices', each: 'job' } as const
/** Asked once for the wall: whether each breast is painted is asked at the breast. */
const hasBreast = (look: Look) => look(bays)?.some((bay) => bay.kind === 'breast') ?? false
const paintedHere = (look: Look) => look(sprayingWay) !== 'buy'

export const builtInSystem = choiceField(
  {
    ...at,
    id: 'builtInSystem',
    short: 'paint',
    asks: () => 'Which coating goes on the built-ins?',
    why: 'It sets films, drying and where it may be sprayed.',
  },
  coatingOptions('built-in'),
)
export const paintMethod = choiceField(
  {
    ...at,
    id: 'paintMethod',
    short: 'method',
    asks: () => 'How is it put on?',
    why: 'A gun puts part of the paint on the floor.',
    when: paintedHere,
  },
  { hand: 'brush and roller', hvlp: 'high-volume low-pressure gun', airless: 'airless gun' },
)
export const paintPlace = choiceField(
  {
    ...at,
    id: 'paintPlace',
    short: 'where',
    asks: () => 'Where are doors and boxes painted?',
    why: 'Spraying in a lived-in house asks for more than a mask.',
    when: paintedHere,
  },
  { shop: 'in the shop', site: 'in the client’s house' },
)
export const builtInColour = textField(
  {
    ...at,
    id: 'builtInColour',
    short: 'built-in colour',
    asks: () => 'Which colour and sheen do the built-ins get, in the client’s words?',
    why: 'On the tins, the chip kit and the touch-up plan.',
  },
  80,
  false,
)
export const wallColour = textField(
  {
    ...at,
    id: 'wallColour',
    short: 'wall colour',
    asks: () => 'Which colour and sheen does the wall have, or get?',
    why: 'The caulk and the touch-up are painted in it.',
  },
  80,
  false,
)
export const wallTinKept = yesNoField({
  ...at,
  id: 'wallTinKept',
  section: 'facts',
  short: 'wall tin',
  asks: () => 'Is the wall’s tin of paint still there, same batch?',
  why: 'Without it the wall is painted corner to corner.',
})
export const masonrySystem = choiceField(
  {
    ...at,
    id: 'masonrySystem',
    short: 'masonry paint',
    asks: () => 'Which coating goes on the masonry face?',
    why: 'It dries before any wood stands against it.',
    when: hasBreast,
  },
  coatingOptions('masonry'),
)
export const masonryColour = textField(
  {
    ...at,
    id: 'masonryColour',
    short: 'masonry colour',
    asks: () => 'Which colour does the masonry get?',
    why: 'On the tins and the chip kit.',
    when: hasBreast,
  },
  80,
  false,
)

export const FINISH_FIELDS = [
  builtInSystem,
  paintMethod,
  paintPlace,
  builtInColour,
  wallColour,
  wallTinKept,
  masonrySystem,
  masonryColour,
] as const
