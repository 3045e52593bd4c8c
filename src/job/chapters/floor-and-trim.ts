import type { Look } from '../../things/field.ts'
import { choiceField, from0, lengthField } from '../entries.ts'
import { baseboardFate, crownFate } from './cabinets.ts'
import { bays } from './wall.ts'

const job = { chapter: 'cabinets', section: 'choices', each: 'job' } as const
const hasRun = (look: Look) => look(bays)?.some((b) => b.kind !== 'breast') ?? false

export const plinthOn = choiceField(
  {
    ...job,
    id: 'plinthOn',
    short: 'boxes stand on',
    asks: () => 'What do the boxes stand on?',
    why: 'A frame on packers carries everywhere; screw feet go under each box and need no frame.',
    when: hasRun,
  },
  { frame: 'a plinth frame on packers', feet: 'screw feet under each box' },
)

export const floorFinish = lengthField(
  {
    ...job,
    id: 'floorFinish',
    short: 'floor to be laid',
    asks: () => 'How thick is the floor that is still to be laid in front of the boxes?',
    why: 'The boxes stand higher by it, so that the kick plate is not lost behind the new floor.',
    help: '0 when the floor is the one that stays.',
    when: hasRun,
  },
  from0(3, 75),
)

export const kickFacing = choiceField(
  {
    ...job,
    id: 'kickFacing',
    short: 'kick plate facing',
    asks: () => 'Is the kick plate faced with new baseboard?',
    why: 'Where the old one comes off, the new one can run on along the boxes.',
    when: (look) => hasRun(look) && look(baseboardFate) === 'remove',
  },
  { plain: 'no, it stays plain', baseboard: 'yes, with new baseboard' },
)

export const newCrown = choiceField(
  {
    ...job,
    id: 'newCrown',
    short: 'new crown',
    asks: () => 'Does a new crown run along the tall boxes?',
    why: 'The old one is cut square at the outer faces of the boxes.',
    when: (look) => hasRun(look) && look(crownFate) === 'cut',
  },
  { no: 'no, only the top filler', yes: 'yes, new crown' },
)

export const FLOOR_AND_TRIM_FIELDS = [plinthOn, floorFinish, kickFacing, newCrown] as const
