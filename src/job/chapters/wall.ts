import * as z from 'zod'
import type { NamedBay } from '../../things/place.ts'
import type { Length } from '../../units/length.ts'
import {
  baysField,
  cell,
  choiceField,
  from0,
  lengthColumn,
  lengthField,
  lengthsField,
  range,
  signedColumn,
  tableField,
} from '../entries.ts'
import { devices } from './wall-devices.ts'

const RUNS = ['alcove', 'flat'] as const
const ALL = ['alcove', 'breast', 'flat'] as const
const at = { chapter: 'wall', section: 'facts' } as const
const of = (place: NamedBay | undefined) => place?.name ?? 'wall'

export const bays = baysField({
  ...at,
  each: 'job',
  id: 'bays',
  short: 'bays',
  asks: () => 'What stands along the wall, left to right?',
  why: 'Each alcove, chimney breast or flat run is measured on its own.',
  help: 'Type the words in order: alcove breast alcove. One word for a single alcove, a breast alone or a flat run.',
})

/** Widths between the returns at one height; lean of each return from a plumb line, + into the alcove. */
export interface WidthRow {
  readonly height: Length
  readonly back?: Length | undefined
  readonly front?: Length | undefined
  readonly left?: Length | undefined
  readonly right?: Length | undefined
}
const L = cell.length
export const widths = tableField<WidthRow>(
  {
    ...at,
    each: ['alcove'],
    id: 'widths',
    missing: 'hold',
    short: 'widths',
    asks: (p) => `How wide is the ${of(p)}, at several heights?`,
    why: 'Walls lean and alcoves taper; each piece gets its own length.',
    help: 'One row a height, from the floor up: height, width at the back, width at the front (at the breast face), left wall leans in, right wall leans in. A dash for what was not measured.',
  },
  z.strictObject({
    height: L,
    back: L.optional(),
    front: L.optional(),
    left: L.optional(),
    right: L.optional(),
  }) as unknown as z.ZodType<WidthRow>,
  [
    lengthColumn('height', 'above floor', 'needed', { inch: '36', metric: '900' }),
    lengthColumn('back', 'at the back', 'or a dash', { inch: '41', metric: '1041' }),
    lengthColumn('front', 'at the front', 'or a dash', { inch: '41 1/8', metric: '1044' }),
    signedColumn('left', 'left leans in', 'or a dash', { inch: '1/8', metric: '3' }),
    signedColumn('right', 'right leans in', 'or a dash', { inch: '0', metric: '0' }),
  ],
  { least: 1, most: 12 },
)
export const squareLeft = lengthField(
  {
    ...at,
    each: ['alcove'],
    id: 'squareLeft',
    missing: 'assume',
    short: 'left square',
    asks: (p) => `How far out of square is the left return of the ${of(p)}?`,
    why: 'Offset of its front edge from square to the back wall, plus into the alcove.',
    help: 'Hold a square on the back wall in the corner. Left out: the taper is split between the two sides.',
  },
  range(-12, 12, -300, 300),
)
export const squareRight = lengthField(
  {
    ...at,
    each: ['alcove'],
    id: 'squareRight',
    missing: 'assume',
    short: 'right square',
    asks: (p) => `How far out of square is the right return of the ${of(p)}?`,
    why: 'Offset of its front edge from square to the back wall, plus into the alcove.',
  },
  range(-12, 12, -300, 300),
)
export const returns = lengthsField(
  {
    ...at,
    each: ['alcove'],
    id: 'returns',
    missing: 'hold',
    short: 'return depths',
    asks: (p) => `How deep is the ${of(p)}: left return, right return?`,
    why: 'The shallower side sets the depth of the boxes and shelves.',
    help: 'From the back wall to the front edge. 0 for a side that is a room wall going on.',
  },
  from0(120, 3000),
  { least: 2, most: 2, labels: ['left', 'right'] },
)
export const breastSize = lengthsField(
  {
    ...at,
    each: ['breast'],
    id: 'breastSize',
    missing: 'hold',
    short: 'breast',
    asks: (p) => `How wide is the ${of(p)}, and how far does it stand out?`,
    why: 'The mantel and the screen must stay on it.',
  },
  range(1, 400, 20, 10_000),
  { least: 2, most: 2, labels: ['width', 'stands out'] },
)
export const flatLength = lengthField(
  {
    ...at,
    each: ['flat'],
    id: 'flatLength',
    missing: 'hold',
    short: 'wall length',
    asks: (p) => `How long is the ${of(p)}?`,
    why: 'The run of boxes is set out on it.',
  },
  range(9, 600, 230, 15_000),
)
export const flatEnds = choiceField(
  {
    ...at,
    each: ['flat'],
    id: 'flatEnds',
    short: 'ends',
    asks: (p) => `Where does the ${of(p)} meet another wall?`,
    why: 'An end at a wall gets a filler; a free end gets a finished gable.',
  },
  { neither: 'neither end', left: 'at its left end', right: 'at its right end', both: 'at both ends' },
)
export const ceiling = lengthsField(
  {
    ...at,
    each: ALL,
    id: 'ceiling',
    missing: 'hold',
    short: 'ceiling',
    asks: (p) => `How high is the ceiling at the ${of(p)}, from left to right?`,
    why: 'The lowest point rules shelves and tall boxes.',
    help: 'Two readings or more above the highest floor point of the wall, evenly spread from the left end to the right.',
  },
  range(24, 300, 600, 7600),
  { least: 1, most: 6 },
)

/** Floor below the level line's zero at a distance from the bay's left end. */
export interface DropRow {
  readonly x: Length
  readonly drop: Length
}
export const floor = tableField<DropRow>(
  {
    ...at,
    each: RUNS,
    id: 'floor',
    missing: 'hold',
    short: 'floor drops',
    asks: (p) => `How far does the floor of the ${of(p)} fall below the highest floor point of the wall?`,
    why: 'Plinth and kick plate take up the fall.',
    help: 'Level a line across the whole wall. One row a point: distance from the left end, drop. The highest point of the wall has 0.',
  },
  z.strictObject({ x: L, drop: L }) as unknown as z.ZodType<DropRow>,
  [
    lengthColumn('x', 'from the left', 'needed', { inch: '40', metric: '1000' }),
    lengthColumn('drop', 'drop', 'needed', { inch: '1/4', metric: '6' }),
  ],
  { least: 1, most: 12 },
)
export const bow = lengthsField(
  {
    ...at,
    each: RUNS,
    id: 'bow',
    missing: 'assume',
    short: 'back wall bow',
    asks: (p) => `How far does the back wall of the ${of(p)} bow: hollow behind a straightedge, proud of it?`,
    why: 'Tops and shelves are cut deeper by the hollow, boxes stand clear of the hump.',
    help: 'Left out: a flat wall, with the usual space behind.',
  },
  from0(6, 150),
  { least: 2, most: 2, labels: ['hollow', 'proud'] },
)
export const baseboard = lengthsField(
  {
    ...at,
    each: RUNS,
    id: 'baseboard',
    missing: 'hold',
    short: 'baseboard',
    asks: (p) => `How high and how thick is the baseboard of the ${of(p)}?`,
    why: 'The boxes stand above a kept one.',
    help: '0 0 when there is none.',
  },
  from0(24, 600),
  { least: 2, most: 2, labels: ['height', 'thickness'] },
)
export const crown = lengthsField(
  {
    ...at,
    each: ALL,
    id: 'crown',
    missing: 'assume',
    short: 'crown',
    asks: (p) => `How far does the crown moulding of the ${of(p)} come down, and stand out?`,
    why: 'Tall boxes and top shelves stay under a kept one.',
    help: '0 0 when there is none; left out: none.',
  },
  from0(18, 450),
  { least: 2, most: 2, labels: ['down', 'out'] },
)
export const wallKind = choiceField(
  {
    ...at,
    each: RUNS,
    id: 'wallKind',
    missing: 'hold',
    short: 'wall',
    asks: (p) => `What is the back wall of the ${of(p)}?`,
    why: 'It decides what holds the boxes and cleats.',
  },
  { studs: 'plaster on studs', masonry: 'masonry', hollow: 'hollow, no stud found' },
)
export const studs = lengthsField(
  {
    ...at,
    each: RUNS,
    id: 'studs',
    missing: 'hold',
    short: 'studs',
    asks: (p) => `Where are the stud centres of the ${of(p)}, from its left end?`,
    why: 'Boxes and cleats are screwed to them.',
    help: 'Every centre you found, from left to right.',
    when: (look) => look(wallKind) === 'studs',
  },
  from0(600, 15_000),
  { least: 1, most: 40 },
)

export const WALL_FIELDS = [
  bays,
  widths,
  squareLeft,
  squareRight,
  returns,
  breastSize,
  flatLength,
  flatEnds,
  ceiling,
  floor,
  bow,
  baseboard,
  crown,
  wallKind,
  studs,
  devices,
] as const
