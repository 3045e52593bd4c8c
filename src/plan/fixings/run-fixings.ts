import { COUNTER_FIXINGS, type CounterFixing, chosenRow } from '../../figures/hardware.ts'
import { counterFixing } from '../../job/chapters/hardware.ts'
import type { Part, Role } from '../../things/part.ts'
import type { Length } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { parseMark } from '../marks.ts'
import { along } from './along.ts'
import { countOver, type FixingLine } from './fixing-line.ts'
import { runsAlongWall } from './wall-fixings.ts'

interface RunWork {
  readonly parts: readonly Part[]
  readonly boxes: readonly Box[]
}

/** Fasteners of what runs past the boxes: counters, gables, fillers, kick plates, plinth frames, shelves, mantel. */
export function runFixings(context: PlanContext, { parts, boxes }: RunWork): readonly FixingLine[] {
  const ofRun = (role: Role) => parts.filter((part) => runRole(part) === role)
  return [...screwed(context, ofRun, boxes), ...pinned(context, ofRun), ...mantelFixings(context, ofRun('E'))]
}

type OfRun = (role: Role) => readonly Part[]

const counted = (id: string, own: readonly Part[], each: (part: Part) => number): number =>
  countOver(
    id,
    own.map((part) => part.quantity * each(part)),
  )

const rowOf = ({ figures }: PlanContext, length: Length): number =>
  along({ length, end: figures.length('screw.top-end'), pitch: figures.length('screw.top-pitch') })

function screwed(context: PlanContext, ofRun: OfRun, boxes: readonly Box[]): readonly FixingLine[] {
  const { figures, show } = context
  const item = `screw ${show.withUnit(figures.length('screw.run'))}`
  const screws = (use: string, count: number): FixingLine => ({ id: 'screw.run', item, use, count, unit: 'piece' })
  const countered = new Set(ofRun('T').map((part) => part.bay))
  const under = boxes.filter((box) => countered.has(box.run.bay.id))
  const { says, screwsEach, bracket } = counterFixingOf(context)
  const places = under.map((box) => 2 * rowOf(context, box.width))
  const each = countOver('bracket', places)
  return [
    ...(bracket === undefined
      ? []
      : [{ id: 'bracket', ...bracket, use: 'counter to its boxes', count: each, unit: 'piece' } as const]),
    screws(
      `counter, ${says}`,
      countOver(
        'screw.run',
        places.map((n) => screwsEach * n),
      ),
    ),
    screws(
      'gables, from inside',
      counted('screw.run', ofRun('G'), (part) => 2 * rowOf(context, part.length)),
    ),
    screws(
      'filler battens',
      counted('screw.run', ofRun('F').filter(isBatten), (part) => rowOf(context, part.length)),
    ),
    screws(
      'plinth frames',
      counted('screw.run', ofRun('U').filter(isCross), () => CROSS_PIECE_SCREWS),
    ),
  ]
}

const counterFixingOf = ({ settle }: PlanContext): CounterFixing =>
  chosenRow(
    COUNTER_FIXINGS,
    settle.choice(counterFixing, undefined, () => ({ value: 'screws', because: 'nothing more to buy' })),
  )

const PINS_PER_BLOCK = 2

function pinned(context: PlanContext, ofRun: OfRun): readonly FixingLine[] {
  const pins = (id: string, use: string, count: number): FixingLine => ({
    id,
    item: 'trim pin',
    use,
    count,
    unit: 'piece',
  })
  const fillers = ofRun('F').filter((part) => !isBatten(part))
  return [
    pins(
      'pin.trim',
      'fillers',
      counted('pin.trim', fillers, (part) => rowOf(context, part.length)),
    ),
    pins(
      'pin.trim',
      'kick plates',
      counted('pin.trim', ofRun('P'), (part) => rowOf(context, part.length)),
    ),
    pins(
      'pin.shelf',
      'shelf skins to their cleats',
      counted('pin.shelf', ofRun('C'), (part) => cleatPins(context, part)),
    ),
  ]
}

/** Two at each end of a cross-piece. */
const CROSS_PIECE_SCREWS = 4

const runRole = (part: Part): Role | undefined => {
  const mark = parseMark(part.mark)
  return mark?.box === undefined ? mark?.role : undefined
}

const isCross = (part: Part): boolean => part.piece === 'cross-piece'

const isBatten = (part: Part): boolean => part.piece === 'batten'

/** Through the top skin into the back cleat, and two into each side cleat. */
const cleatPins = ({ figures }: PlanContext, cleat: Part): number =>
  runsAlongWall(cleat.placement)
    ? along({ length: cleat.length, end: figures.length('screw.cleat-end'), pitch: figures.length('pin.shelf-pitch') })
    : 2

/** Ledger to the breast; the mantel's box pinned to the blocks. */
function mantelFixings({ figures }: PlanContext, pieces: readonly Part[]): readonly FixingLine[] {
  const ledgerRow = (length: Length) =>
    along({ length, end: figures.length('screw.cleat-end'), pitch: figures.length('screw.top-pitch') })
  const ledgers = pieces.filter((part) => part.piece === 'ledger')
  const blocks = pieces.filter((part) => part.piece === 'block')
  const anchors = counted('anchor', ledgers, (part) => ledgerRow(part.length))
  const pins = counted('pin.trim', blocks, () => PINS_PER_BLOCK)
  const legs = legFixings(pieces, ledgerRow)
  return [
    { id: 'anchor', item: 'masonry anchor with its screw', use: 'mantel ledger', count: anchors, unit: 'piece' },
    { id: 'anchor', item: 'masonry anchor with its screw', use: 'mantel legs', count: legs.anchors, unit: 'piece' },
    { id: 'pin.trim', item: 'trim pin', use: 'mantel to its blocks', count: pins, unit: 'piece' },
    { id: 'pin.trim', item: 'trim pin', use: 'mantel legs to their core blocks', count: legs.pins, unit: 'piece' },
  ]
}

/** A leg slides over its core blocks: two anchors and four pins each; a flat board without blocks is anchored by itself. */
function legFixings(pieces: readonly Part[], row: (length: Length) => number) {
  const cores = pieces.filter((part) => part.piece === 'core')
  const bare = pieces.filter((part) => part.piece === 'front' && !cores.some((core) => core.mark === part.mark))
  const blocks = cores.reduce((n, part) => n + part.quantity, 0)
  return {
    anchors: ANCHORS_A_BLOCK * blocks + bare.reduce((n, part) => n + row(part.length), 0),
    pins: PINS_A_BLOCK * blocks,
  }
}
const ANCHORS_A_BLOCK = 2
const PINS_A_BLOCK = 4
