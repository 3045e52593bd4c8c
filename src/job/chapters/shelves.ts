import { optionsOf } from '../../kinds/options.ts'
import { SHELVES } from '../../kinds/shelf/list.ts'
import type { Look } from '../../things/field.ts'
import type { NamedBay } from '../../things/place.ts'
import { choiceField, countField, lengthField, lengthsField, range, yesNoField } from '../entries.ts'
import { returns } from './wall.ts'

const at = { chapter: 'shelves', section: 'choices' } as const
const bay = { ...at, each: ['alcove', 'flat'] } as const
const job = { ...at, each: 'job' } as const
const of = (place: NamedBay | undefined) => place?.name ?? 'wall'

export const shelfKind = choiceField(
  {
    ...job,
    id: 'shelfKind',
    short: 'shelf kind',
    asks: () => 'How are the floating shelves made?',
    why: 'It decides their pieces and what holds them.',
    when: () => Object.keys(SHELVES).length > 1,
  },
  optionsOf(SHELVES),
)
export const alignShelves = yesNoField({
  ...job,
  id: 'alignShelves',
  short: 'aligned',
  asks: () => 'Do the shelves line up across the wall?',
  why: 'One height each side, so the eye runs straight across.',
})
export const shelfLoad = choiceField(
  {
    ...job,
    id: 'shelfLoad',
    short: 'load',
    asks: () => 'What stands on the floating shelves?',
    why: 'Books bend a thin shelf for good.',
  },
  { books: 'books', ornaments: 'ornaments' },
)
export const skinThickness = lengthField(
  {
    ...job,
    id: 'skinThickness',
    short: 'shelf skins',
    asks: () => 'How thick are the shelf skins, by the caliper?',
    why: 'Two skins and the void make the shelf.',
  },
  range(0.1, 1, 3, 25),
)
export const edgeThickness = lengthField(
  {
    ...job,
    id: 'edgeThickness',
    short: 'shelf edge',
    asks: () => 'How thick is the shelf’s front edge, by the caliper?',
    why: 'It covers the skins and stiffens the front.',
  },
  range(0.1, 2, 3, 50),
)
export const shelfSetBack = lengthField(
  {
    ...job,
    id: 'shelfSetBack',
    short: 'set-back',
    asks: () => 'How far behind the breast face do the shelves stop?',
    why: 'A shelf never stands proud of its recess.',
  },
  range(0, 12, 0, 300),
)
export const shelfCount = countField(
  {
    ...bay,
    id: 'shelfCount',
    short: 'shelves',
    asks: (p) => `How many floating shelves in the ${of(p)}?`,
    why: 'They divide the wall above the counter.',
  },
  0,
  12,
)
const withShelves = (look: Look) => (look(shelfCount) ?? 0) > 0
/** An alcove between two room walls that go on: nothing but the wish limits a shelf's depth. */
const hasNoReturns = (look: Look) => look(returns)?.every((depth) => depth === 0) ?? false
export const shelfHeights = lengthsField(
  {
    ...bay,
    id: 'shelfHeights',
    short: 'shelf tops',
    asks: (p) => `How high is the top of each shelf in the ${of(p)}, from the lowest up?`,
    why: 'Set out from the level line.',
    when: withShelves,
  },
  range(4, 240, 100, 6000),
  { least: 1, most: 12 },
)
export const shelfThickness = lengthField(
  {
    ...bay,
    id: 'shelfThickness',
    short: 'shelf thickness',
    asks: (p) => `How thick are the shelves in the ${of(p)}?`,
    why: 'The thinnest that carries its load over its span.',
    when: withShelves,
  },
  range(1, 6, 25, 150),
)
export const shelfLength = lengthField(
  {
    ...bay,
    each: ['flat'],
    id: 'shelfLength',
    missing: 'suggest',
    short: 'shelf length',
    asks: (p) => `How long are the shelves on the ${of(p)}?`,
    why: 'There are no returns to stop them.',
    when: withShelves,
  },
  range(6, 240, 150, 6000),
)
export const shelfDepth = lengthField(
  {
    ...bay,
    id: 'shelfDepth',
    short: 'shelf depth',
    asks: (p) => `How deep are the shelves of the ${of(p)}?`,
    why: 'There are no returns to stop them.',
    when: (look, place) => withShelves(look) && (place?.kind === 'flat' || hasNoReturns(look)),
  },
  range(4, 30, 100, 800),
)

export const SHELF_FIELDS = [
  shelfKind,
  shelfLoad,
  alignShelves,
  skinThickness,
  edgeThickness,
  shelfSetBack,
  shelfCount,
  shelfHeights,
  shelfThickness,
  shelfLength,
  shelfDepth,
] as const
