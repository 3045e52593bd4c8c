import { COUNTER_FIXINGS, HANDLES, HINGES, SHELF_PINS } from '../../figures/hardware.ts'
import { FRONTS } from '../../kinds/front/list.ts'
import { optionsOf } from '../../kinds/options.ts'
import type { Look } from '../../things/field.ts'
import { choiceField, countField, lengthField, lengthsField, range } from '../entries.ts'
import { counter } from './cabinets.ts'
import { bays } from './wall.ts'

const at = { chapter: 'hardware', section: 'choices', each: 'job' } as const
/** Doors may hang somewhere on this wall. */
const hasRun = (look: Look) => look(bays)?.some((b) => b.kind !== 'breast') ?? false

export const doors = choiceField(
  {
    ...at,
    id: 'doors',
    short: 'doors',
    asks: () => 'Do the boxes get doors?',
    why: 'Open boxes need no hinge room at the wall.',
    when: hasRun,
  },
  { yes: 'doors', no: 'open boxes' },
)
/** Boxes have fronts: leaves, and drawers where they are asked for. */
export const withDoors = (look: Look) => hasRun(look) && look(doors) !== 'no'
export const frontStyle = choiceField(
  {
    ...at,
    id: 'frontStyle',
    short: 'door style',
    asks: () => 'How are the doors made?',
    why: 'It decides parts, mass and hinges.',
    when: withDoors,
  },
  optionsOf(FRONTS),
)
export const frontThickness = lengthField(
  {
    ...at,
    id: 'frontThickness',
    short: 'door panel',
    asks: () => 'How thick are the doors, by the caliper?',
    why: 'The boxes are made shallower by it.',
    when: withDoors,
  },
  range(0.4, 1.5, 9, 40),
)
export const stileWidth = lengthField(
  {
    ...at,
    id: 'stileWidth',
    short: 'stile width',
    asks: () => 'How wide are stiles and rails?',
    why: 'The frame you see round each panel.',
    when: (look) => withDoors(look) && FRONTS[look(frontStyle) ?? 'slab'].asksFrame,
  },
  range(1, 6, 25, 150),
)
export const leavesPerBox = countField(
  {
    ...at,
    id: 'leavesPerBox',
    short: 'leaves per box',
    asks: () => 'How many leaves on each box?',
    why: 'As few as stay narrow enough.',
    when: withDoors,
  },
  1,
  4,
)
export const hinge = choiceField(
  {
    ...at,
    id: 'hinge',
    short: 'hinges',
    asks: () => 'Which hinges?',
    why: 'Soft-close costs about one unit more for each hinge; a wide one opens past the next door.',
    when: withDoors,
  },
  optionsOf(HINGES),
)
export const hingeSheet = lengthsField(
  {
    ...at,
    id: 'hingeSheet',
    short: 'hinge sheet',
    asks: () => 'From the hinge’s sheet: cup diameter, cup centre from the edge, depth, plate behind the front edge?',
    why: 'Generic figures stand until the sheet is here.',
    help: 'All four in this order; without the last one the usual distance of the plate stands.',
    when: withDoors,
  },
  range(0.2, 3, 5, 75),
  { least: 3, most: 4, labels: ['diameter', 'from the edge', 'depth', 'plate set back'] },
)
export const handle = choiceField(
  {
    ...at,
    id: 'handle',
    short: 'handles',
    asks: () => 'Which handles?',
    why: 'Holes are set out on every leaf.',
    when: withDoors,
  },
  optionsOf(HANDLES),
)
export const pullSpacing = lengthField(
  {
    ...at,
    id: 'pullSpacing',
    short: 'pull holes',
    asks: () => 'How far apart are the pull’s holes?',
    why: 'Drilled before painting.',
    when: (look) => withDoors(look) && HANDLES[look(handle) ?? '']?.holes === 2,
  },
  range(1, 30, 30, 750),
)

export const shelfPin = choiceField(
  {
    ...at,
    id: 'shelfPin',
    short: 'shelf pins',
    asks: () => 'What do the loose shelves sit on?',
    why: 'Sleeves keep the holes round where shelves are moved often.',
    when: hasRun,
  },
  optionsOf(SHELF_PINS),
)

export const counterFixing = choiceField(
  {
    ...at,
    id: 'counterFixing',
    short: 'counter fixing',
    asks: () => 'What holds the counter to its boxes?',
    why: 'Wood and panel move a little: the holes are slots.',
    when: (look) => hasRun(look) && look(counter) !== false,
  },
  optionsOf(COUNTER_FIXINGS),
)

export const HARDWARE_FIELDS = [
  doors,
  frontStyle,
  frontThickness,
  stileWidth,
  leavesPerBox,
  hinge,
  hingeSheet,
  handle,
  pullSpacing,
  shelfPin,
  counterFixing,
] as const
