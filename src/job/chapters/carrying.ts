import { lengthsField, range } from '../entries.ts'

const at = { chapter: 'wall', section: 'facts', each: 'job', missing: 'assume' } as const
const LEFT_OUT = 'Left out: nothing is checked against it.'

export const smallestDoor = lengthsField(
  {
    ...at,
    id: 'smallestDoor',
    short: 'smallest door',
    asks: () => 'How wide and how high is the smallest door on the way in, clear of its leaf?',
    why: 'A box that does not pass is put together in the room.',
    help: `Between the stops, with the leaf open. ${LEFT_OUT}`,
  },
  range(12, 240, 300, 6000),
  { least: 2, most: 2, labels: ['width', 'height'] },
)
export const narrowTurn = lengthsField(
  {
    ...at,
    id: 'narrowTurn',
    short: 'tightest turn',
    asks: () => 'At the tightest turn on the way in, how wide is the way before it and after it?',
    why: 'Long pieces stick at a corner of stair or hallway before they stick at a door.',
    help: `Flight and landing, or hallway and hallway, between the walls or rails. ${LEFT_OUT}`,
  },
  range(12, 240, 300, 6000),
  { least: 2, most: 2, labels: ['before', 'after'] },
)
export const hallway = lengthsField(
  {
    ...at,
    id: 'hallway',
    short: 'hallway',
    asks: () => 'How wide and how high is the narrowest hallway or stair on the way in?',
    why: 'A piece is carried through it on edge, flat or upright.',
    help: `Width between the walls, height to the ceiling or the flight above. ${LEFT_OUT}`,
  },
  range(12, 240, 300, 6000),
  { least: 2, most: 2, labels: ['width', 'height'] },
)

export const CARRYING_FIELDS = [smallestDoor, narrowTurn, hallway] as const
