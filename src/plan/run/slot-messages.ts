import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const boxTooNarrow = messageKind<{ width: string; least: string; short: string }>({
  code: 'S1',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `${v.width} is too narrow for a box; the least is ${v.least}.`,
    why: 'A narrower box holds nothing and leaves no room for hinges.',
    todo: `It is short by ${v.short}: take fewer boxes, caulked sides, or no boxes here.`,
  }),
})

export const fillerTooThin = messageKind<{ side: string; gap: string; least: string; short: string; width: string }>({
  code: 'S2',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `The filler at the ${v.side} would be only ${v.gap} wide.`,
    why: `Under ${v.least} it cannot be scribed and held.`,
    todo: `Make the fillers wider by ${v.short}: ${v.width}.`,
  }),
})

export const fillerWide = messageKind<{ sides: string; gap: string; most: string }>({
  code: 'C2',
  weight: 'confirm',
  source: PRACTICE,
  says: (v) => ({
    short: `The filler at the ${v.sides} is up to ${v.gap} wide.`,
    why: `Over ${v.most} it starts to look like a patch.`,
    todo: 'Use wider boxes, or say yes to a wide filler.',
  }),
})

export const gapTooWideForCaulk = messageKind<{ side: string; gap: string; most: string }>({
  code: 'S3',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `The caulked gap at the ${v.side} would open to ${v.gap}.`,
    why: `Over ${v.most} caulk sinks and cracks.`,
    todo: 'Put a scribed filler on that side.',
  }),
})

export const heldBeyond = messageKind<{ from: string; to: string; low: string; high: string }>({
  code: 'N1',
  weight: 'note',
  source: PRACTICE,
  says: (v) => ({
    short: `The boxes stand from ${v.from} to ${v.to}; widths were measured from ${v.low} to ${v.high}.`,
    why: 'Beyond the readings the nearest one is taken.',
    todo: 'Measure one more width near the foot and one near the top of the boxes.',
  }),
})

export const leafBesideWall = messageKind<{ side: string; filler: string }>({
  code: 'N5',
  weight: 'note',
  source: PRACTICE,
  says: (v) => ({
    short: `A leaf hangs close beside the wall at the ${v.side}.`,
    why: 'The wall runs on past the door face, so the leaf may not swing open.',
    todo: `A filler of ${v.filler} gives it room, or hinge it on its other side.`,
  }),
})

export const runBeyondWall = messageKind<{ end: string; wall: string; over: string }>({
  code: 'S20',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `The run ends at ${v.end}; the wall is ${v.wall} long.`,
    why: 'Boxes, gables and fillers stand on the wall from end to end.',
    todo: `Shorten the run by ${v.over}, or start it further left.`,
  }),
})
