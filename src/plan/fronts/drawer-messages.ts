import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const drawersNowhere = messageKind<{ numbers: string; boxes: string }>({
  code: 'S25',
  weight: 'stop',
  source: 'geometry',
  says: (v) => ({
    short: `Drawers are asked for in box ${v.numbers}; the run has ${v.boxes}.`,
    why: 'Boxes are counted from the left, beginning with 1.',
    todo: 'Give the number of a box that is there, or take these drawers out.',
  }),
})

export const drawerFrontsDoNotFit = messageKind<{ face: string; by: string; which: string; way: string }>({
  code: 'S9',
  weight: 'stop',
  source: 'geometry',
  says: (v) => ({
    short: `The drawer fronts ${v.which} by ${v.by}; there is ${v.face} for them and their gaps.`,
    why: 'Fronts fill the height of the box, or leave enough of it for a door.',
    todo: `${v.way}.`,
  }),
})

export const drawerTooLow = messageKind<{ height: string; least: string; front: string }>({
  code: 'S9',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `A drawer box would be only ${v.height} high; its slide needs ${v.least}.`,
    why: 'It is lower than its front, and clear of the panels over and under it.',
    todo: `Take fewer drawers, or a front of ${v.front} or more.`,
  }),
})

export const noSlideFits = messageKind<{ free: string; shortest: string; behind: string; depth: string }>({
  code: 'S9',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `No drawer slide goes into ${v.free}; the shortest sold is ${v.shortest}.`,
    why: `Behind a slide there stays ${v.behind}.`,
    todo: `Boxes ${v.depth} deep take it; or give these boxes doors.`,
  }),
})

export const hardwareGeneric = messageKind<{ what: string }>({
  code: 'N21',
  weight: 'note',
  source: PRACTICE,
  says: (v) => ({
    short: `No sheet is typed in for the ${v.what}: generic figures are used.`,
    why: 'Cups, plates and slides differ from maker to maker by a few millimetres.',
    todo: 'Check them against the sheet before the first hole, or type in its figures.',
  }),
})
