import type { Look } from '../../things/field.ts'
import type { NamedBay } from '../../things/place.ts'
import { choiceField, countField, from0, lengthField, lengthsField, range, yesNoField } from '../entries.ts'
import { bays, flatEnds } from './wall.ts'

const at = { chapter: 'cabinets', section: 'choices' } as const
const run = { ...at, each: ['alcove', 'flat'] } as const
const job = { ...at, each: 'job' } as const
const of = (place: NamedBay | undefined) => place?.name ?? 'wall'
/** Boxes can only stand in an alcove or on a flat wall. */
const hasRun = (look: Look) => look(bays)?.some((b) => b.kind !== 'breast') ?? false

export const boxKind = choiceField(
  {
    ...run,
    id: 'boxKind',
    short: 'boxes',
    asks: (p) => `Which boxes stand in the ${of(p)}?`,
    why: 'Base boxes carry a counter; tall ones reach the ceiling.',
  },
  { base: 'base boxes', tall: 'tall boxes', none: 'no boxes' },
)
/** An alcove has a wall at both sides; a flat wall where it was said. */
const wallAt = (look: Look, place: NamedBay | undefined, side: 'left' | 'right') =>
  place?.kind !== 'flat' || look(flatEnds) === side || look(flatEnds) === 'both'
const withBoxes = (look: Look) => (look(boxKind) ?? 'none') !== 'none'

export const boxHeight = lengthField(
  {
    ...job,
    id: 'boxHeight',
    short: 'box height',
    asks: () => 'How high is a base box, without its plinth?',
    why: 'With plinth and counter it sets the height you work at.',
    when: hasRun,
  },
  range(9, 60, 230, 1500),
)
export const tallHeight = lengthField(
  {
    ...run,
    id: 'tallHeight',
    short: 'tall box height',
    asks: (p) => `How high is a tall box in the ${of(p)}, without its plinth?`,
    why: 'It is stood up under the ceiling, and its sides come out of one sheet.',
    when: (look) => look(boxKind) === 'tall',
  },
  range(20, 140, 500, 3600),
)
export const baseboardFate = choiceField(
  {
    ...job,
    id: 'baseboardFate',
    short: 'baseboard',
    asks: () => 'What becomes of the baseboard behind the boxes?',
    why: 'A kept one lifts the boxes; a cut one may hold old paint.',
    when: hasRun,
  },
  { keep: 'kept: the boxes stand above it', cut: 'cut back along the boxes', remove: 'removed on the whole wall' },
)
export const crownFate = choiceField(
  {
    ...job,
    id: 'crownFate',
    short: 'crown',
    asks: () => 'What becomes of a crown moulding?',
    why: 'Tall boxes and top shelves stay under a kept one.',
    when: hasRun,
  },
  { keep: 'kept', cut: 'cut back at the boxes' },
)
export const kick = lengthField(
  {
    ...job,
    id: 'kick',
    short: 'plinth',
    asks: () => 'How high above the floor do the boxes start?',
    why: 'The kept baseboard runs on behind them; a box stands above it.',
    when: hasRun,
  },
  range(0, 16, 0, 400),
)
export const kickSet = lengthField(
  {
    ...job,
    id: 'kickSet',
    short: 'kick set-back',
    asks: () => 'How far behind the box front is the kick plate?',
    why: 'Room for toes; 0 for a flush plinth.',
    when: hasRun,
  },
  from0(6, 150),
)
export const carcassThickness = lengthField(
  {
    ...job,
    id: 'carcassThickness',
    short: 'carcass panel',
    asks: () => 'How thick is the carcass panel, by the caliper?',
    why: 'Every inside size subtracts it: measure three places, take the largest.',
  },
  range(0.4, 1.5, 9, 40),
)
export const backThickness = lengthField(
  {
    ...job,
    id: 'backThickness',
    short: 'back panel',
    asks: () => 'How thick is the box back, by the caliper?',
    why: 'An applied back shortens the sides by it.',
    when: hasRun,
  },
  range(0.1, 1, 3, 25),
)
export const backFit = choiceField(
  {
    ...job,
    id: 'backFit',
    short: 'back',
    asks: () => 'How is the box back fitted?',
    why: 'It changes sides, bottom and nailers.',
    when: hasRun,
  },
  { applied: 'applied behind the sides', grooved: 'in grooves' },
)
export const boxTop = choiceField(
  {
    ...job,
    id: 'boxTop',
    short: 'box top',
    asks: () => 'What closes the box at the top?',
    why: 'Under a counter two rails are enough.',
    when: hasRun,
  },
  { full: 'a full panel', rails: 'two rails' },
)
export const looseShelves = countField(
  {
    ...job,
    id: 'looseShelves',
    short: 'loose shelves',
    asks: () => 'How many loose shelves in each box?',
    why: 'On pins, in rows of holes.',
    when: hasRun,
  },
  0,
  12,
)
export const counter = yesNoField({
  ...job,
  id: 'counter',
  short: 'counter',
  asks: () => 'Do the base boxes get a counter?',
  why: 'It follows the walls and overhangs the doors.',
  when: hasRun,
})
export const counterThickness = lengthField(
  {
    ...job,
    id: 'counterThickness',
    short: 'counter panel',
    asks: () => 'How thick is the counter, by the caliper?',
    why: 'It sits on the boxes and is scribed to the walls.',
    when: (look) => hasRun(look) && look(counter) === true,
  },
  range(0.4, 3, 9, 80),
)

export const boxCount = countField(
  {
    ...run,
    id: 'boxCount',
    short: 'boxes in the run',
    asks: (p) => `How many boxes in the ${of(p)}?`,
    why: 'Fewest that stay narrow enough to carry and hang doors on.',
    when: withBoxes,
  },
  1,
  24,
)
export const boxWidths = lengthsField(
  {
    ...run,
    id: 'boxWidths',
    short: 'box widths',
    asks: (p) => `How wide is each box in the ${of(p)}, from left to right?`,
    why: 'Equal unless a device or a door line asks for other widths; together they fill the run.',
    when: withBoxes,
  },
  range(4, 96, 100, 2400),
  { least: 1, most: 24 },
)
export const fitLeft = choiceField(
  {
    ...run,
    id: 'fitLeft',
    short: 'left side',
    asks: (p) => `How does the run meet the wall at the left of the ${of(p)}?`,
    why: 'A hinged leaf needs a filler to swing past the wall.',
    when: (look, place) => withBoxes(look) && wallAt(look, place, 'left'),
  },
  { filler: 'a scribed filler', caulk: 'a caulked gap' },
)
export const fitRight = choiceField(
  {
    ...run,
    id: 'fitRight',
    short: 'right side',
    asks: (p) => `How does the run meet the wall at the right of the ${of(p)}?`,
    why: 'A hinged leaf needs a filler to swing past the wall.',
    when: (look, place) => withBoxes(look) && wallAt(look, place, 'right'),
  },
  { filler: 'a scribed filler', caulk: 'a caulked gap' },
)
export const fillerWidth = lengthField(
  {
    ...run,
    id: 'fillerWidth',
    short: 'filler',
    asks: (p) => `How wide is a filler in the ${of(p)}?`,
    why: 'Room to scribe to the wall.',
    when: (look) => withBoxes(look) && (look(fitLeft) === 'filler' || look(fitRight) === 'filler'),
  },
  range(0.25, 6, 6, 150),
)
export const boxDepth = lengthField(
  {
    ...run,
    id: 'boxDepth',
    short: 'box depth',
    asks: (p) => `How deep are the boxes in the ${of(p)}, without doors?`,
    why: 'The doors stay behind the breast face.',
    when: withBoxes,
  },
  range(4, 40, 100, 1000),
)
export const runLength = lengthField(
  {
    ...run,
    each: ['flat'],
    id: 'runLength',
    short: 'run',
    asks: (p) => `How long is the run of boxes on the ${of(p)}?`,
    why: 'Without its gables and fillers.',
    when: withBoxes,
  },
  range(9, 480, 230, 12_000),
)
export const runStart = lengthField(
  {
    ...run,
    each: ['flat'],
    id: 'runStart',
    short: 'run starts',
    asks: (p) => `How far from the left end of the ${of(p)} does the run start?`,
    why: 'Its set-out on the wall.',
    when: withBoxes,
  },
  from0(480, 12_000),
)

export const CABINET_FIELDS = [
  baseboardFate,
  boxKind,
  boxHeight,
  kick,
  kickSet,
  crownFate,
  tallHeight,
  carcassThickness,
  backThickness,
  backFit,
  boxTop,
  looseShelves,
  counter,
  counterThickness,
  runLength,
  runStart,
  fitLeft,
  fitRight,
  fillerWidth,
  boxCount,
  boxWidths,
  boxDepth,
] as const
