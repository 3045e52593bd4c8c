import * as z from 'zod'
import { SLIDES } from '../../figures/hardware.ts'
import { FRONTS } from '../../kinds/front/list.ts'
import { optionsOf } from '../../kinds/options.ts'
import type { Look } from '../../things/field.ts'
import type { Length } from '../../units/length.ts'
import {
  cell,
  choiceField,
  countColumn,
  lengthColumn,
  lengthField,
  lengthsField,
  range,
  tableField,
} from '../entries.ts'
import { boxKind } from './cabinets.ts'
import { withDoors } from './hardware.ts'

const at = { chapter: 'hardware', section: 'choices', each: 'job' } as const

export const drawersWanted = choiceField(
  {
    ...at,
    id: 'drawersWanted',
    short: 'drawers',
    asks: () => 'Do any boxes get drawers?',
    why: 'A drawer needs slides, a box of its own and more hours than a door.',
    when: withDoors,
  },
  { no: 'doors only', yes: 'some boxes get drawers' },
)
const withDrawers = (look: Look) => withDoors(look) && look(drawersWanted) === 'yes'

/** As many boxes as a run may have. */
const MOST_BOXES = 24

/** One drawer: the box it is in, and how high its front is; no height = an equal share of what the others leave. */
export interface DrawerRow {
  readonly box: number
  readonly height?: Length | undefined
}

export const drawers = tableField<DrawerRow>(
  {
    chapter: 'hardware',
    section: 'choices',
    each: ['alcove', 'flat'],
    id: 'drawers',
    short: 'which drawers',
    asks: (p) => `Which boxes in the ${p?.name ?? 'wall'} get drawers, from the top one down?`,
    why: 'A box with drawers has no loose shelves; each front gets its own height.',
    help: 'One row a drawer: number of the box from the left, height of its front; a dash shares the height equally. Heights for all drawers of a box that leave room: doors take the rest. "none" when there are none.',
    when: (look) => (look(boxKind) ?? 'none') !== 'none' && withDrawers(look),
  },
  z.strictObject({
    box: cell.count(1, MOST_BOXES),
    height: cell.length.optional(),
  }) as unknown as z.ZodType<DrawerRow>,
  [
    countColumn('box', 'box', 'needed', { least: 1, most: MOST_BOXES, like: '1' }),
    lengthColumn('height', 'front height', 'or a dash', { inch: '6', metric: '150' }),
  ],
  { least: 0, most: 48 },
)

export const drawerFrontStyle = choiceField(
  {
    ...at,
    id: 'drawerFrontStyle',
    short: 'drawer fronts',
    asks: () => 'How are the drawer fronts made?',
    why: 'A low front has no room for a frame and a panel.',
    when: withDrawers,
  },
  optionsOf(FRONTS),
)
export const drawerSide = lengthField(
  {
    ...at,
    id: 'drawerSide',
    short: 'drawer panel',
    asks: () => 'How thick are the drawer sides, by the caliper?',
    why: 'The drawer’s bottom and ends are cut to fit between them.',
    when: withDrawers,
  },
  range(0.3, 1, 8, 25),
)
export const slide = choiceField(
  {
    ...at,
    id: 'slide',
    short: 'drawer slides',
    asks: () => 'Which drawer slides?',
    why: 'They set how wide, how long and how high the drawer box is.',
    when: withDrawers,
  },
  optionsOf(SLIDES),
)
export const slideSheet = lengthsField(
  {
    ...at,
    id: 'slideSheet',
    short: 'slide sheet',
    asks: () =>
      'From the slide’s sheet: clearance at each side, room under the drawer, screw line above its lower edge?',
    why: 'Generic figures stand until the sheet is here.',
    when: withDrawers,
  },
  range(0, 4, 0, 100),
  { least: 3, most: 3, labels: ['each side', 'under the drawer', 'screw line'] },
)

/** Asked after the doors: what is asked once, then what is asked at each run. */
export const DRAWER_FIELDS = [drawersWanted, drawerFrontStyle, drawerSide, slide, slideSheet, drawers] as const
