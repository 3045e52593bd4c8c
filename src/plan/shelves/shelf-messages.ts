import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const shelfTooShallow = messageKind<{ depth: string; least: string; todo: string }>({
  code: 'S5',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `The shelves are ${v.depth} deep; the least is ${v.least}.`,
    why: 'Front edge, cleat and a book need that much.',
    todo: `${v.todo.charAt(0).toUpperCase()}${v.todo.slice(1)}`,
  }),
})

export const shelfMeetsDevice = messageKind<{ device: string; shelf: number; up: string; down: string }>({
  code: 'S8',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `Shelf ${v.shelf} would cover the ${v.device}.`,
    why: 'A device behind or beside a shelf cannot be reached.',
    todo: `Set the shelf’s top at ${v.up} or higher, or at ${v.down} or lower, or have the device moved by a licensed trade.`,
  }),
})

export const shelfHasNoVoid = messageKind<{ thickness: string; least: string }>({
  code: 'S9',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `A shelf ${v.thickness} thick leaves no room for its cleats.`,
    why: 'Two skins and the hollow between them make its thickness.',
    todo: `Make it ${v.least} or thicker, or use thinner skins.`,
  }),
})

export const shelvesDoNotFit = messageKind<{ asked: number; most: number; between: string; or: string }>({
  code: 'S10',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `${v.asked} ${v.asked === 1 ? 'shelf does' : 'shelves do'} not fit in height; ${v.most === 0 ? 'none does' : `${v.most} at most`}.`,
    why: `Each needs ${v.between} clear over what is below it, and the top one room under the ceiling.`,
    todo: v.or,
  }),
})

export const shelfHeightsCount = messageKind<{ count: number; heights: number }>({
  code: 'S20',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `${v.count} shelves are asked for and ${v.heights} heights are given.`,
    why: 'Each shelf has its own height from the level line.',
    todo: `Give ${v.count} heights, or change the count to ${v.heights}.`,
  }),
})

export const shelfCannotPass = messageKind<{ shelf: number; gap: string; most: string }>({
  code: 'S11',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `Shelf ${v.shelf} passes the mouth only so short that ${v.gap} stays open at each back corner.`,
    why: `The recess is wider at the back than at its mouth; up to ${v.most} is closed with a loose strip.`,
    todo: 'Make the shelf in two pieces joined over a rib, or have the return straightened, then measure again.',
  }),
})

/** Shelves of one bay that leave more open at their back corners than caulk closes; one question a bay. */
export const shelfEndStrip = messageKind<{ shelves: string; gap: string; caulked: string }>({
  code: 'C6',
  weight: 'confirm',
  source: PRACTICE,
  says: (v) => ({
    short: `Each back corner stays open by up to ${v.gap}: ${v.shelves}.`,
    why: `A shelf must pass a narrower mouth; caulk closes ${v.caulked} at most.`,
    todo: 'Scribe a loose strip into each end afterwards, or say no and straighten the return.',
  }),
})

export const shelfTooWeak = messageKind<{ shelf: number; sag: string; limit: string; span: string; todo: string }>({
  code: 'S13',
  weight: 'stop',
  source: 'Wood Handbook, table 9-1; creep EN 1995-1-1, table 3.2; limit common practice, no source',
  says: (v) => ({
    short: `Shelf ${v.shelf} bends ${v.sag} for good over ${v.span}; ${v.limit} is the most.`,
    why: 'Panel creeps under a lasting load: what bends a little at first bends three times that in the end.',
    todo: v.todo,
  }),
})

export const shelfPullsOut = messageKind<{ shelf: number; pull: string; holds: string; todo: string }>({
  code: 'S13',
  weight: 'stop',
  source: 'NDS wood screw withdrawal, spruce, number 8, as Building Design and Construction Handbook eq. 6.37',
  says: (v) => ({
    short: `Shelf ${v.shelf} hangs on its back cleat alone and pulls ${v.pull} on each screw; one holds ${v.holds}.`,
    why: 'Without a cleat at both ends the whole load levers the screws out of the wall.',
    todo: v.todo,
  }),
})

/** Back cleats of one bay with nothing behind that holds them; one question a bay. */
export const shelfNeedsBlocking = messageKind<{ shelves: string; heights: string; length: string }>({
  code: 'C5',
  weight: 'confirm',
  source: PRACTICE,
  says: (v) => ({
    short: `The back cleat meets fewer than 2 studs: ${v.shelves}.`,
    why: 'Plaster alone holds no shelf.',
    todo: `Put blocking into the wall behind each cleat, ${v.length} long, before the plaster is closed; its middle above the highest floor point: ${v.heights}.`,
  }),
})

/** Shelves of one bay that hang on anchors; one question a bay. */
export const shelfOnAnchors = messageKind<{ shelves: string; pull: string }>({
  code: 'C5',
  weight: 'confirm',
  source: 'the anchor’s own published load, halved (common practice)',
  says: (v) => ({
    short: `Hangs on anchors in masonry, up to ${v.pull} pull on each: ${v.shelves}.`,
    why: 'What masonry holds depends on the anchor and the wall; no general figure stands for it.',
    todo: 'Choose anchors whose published pull-out load is twice that in this wall, and name them.',
  }),
})

export const returnsDiffer = messageKind<{ left: string; right: string }>({
  code: 'N10',
  weight: 'note',
  source: PRACTICE,
  says: (v) => ({
    short: 'The two returns differ in depth.',
    why: 'The shelf follows the shorter one.',
    todo: `Its front stops ${v.left} behind the left return’s edge and ${v.right} behind the right one’s.`,
  }),
})

export const turningRoom = messageKind<{ room: string }>({
  code: 'N8',
  weight: 'note',
  source: 'geometry',
  says: (v) => ({
    short: `Turning a shelf in front of the recess takes ${v.room} of free floor.`,
    why: 'The last movement is straight back over the cleats: it is turned before it reaches them.',
    todo: 'Keep that much clear in front, or carry it in already turned.',
  }),
})
