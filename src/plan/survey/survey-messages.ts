import { messageKind } from '../../things/message.ts'

const PRACTICE = 'common practice, no source'

export const surveyResidual = messageKind<{ what: string; height: string; differ: string; allowed: string }>({
  code: 'C1',
  weight: 'confirm',
  source: PRACTICE,
  says: (v) => ({
    short: `${v.what} and the widths disagree by ${v.differ} at height ${v.height}.`,
    why: `Readings of one wall agree within ${v.allowed}; the plan follows the left side.`,
    todo: `Measure again at height ${v.height}: the width there, then both sides.`,
  }),
})

export const surveyOutside = messageKind<{ what: string; is: string; usual: string }>({
  code: 'C1',
  weight: 'confirm',
  source: PRACTICE,
  says: (v) => ({
    short: `${v.what} is ${v.is}.`,
    why: `It is usually ${v.usual}; a slip of the tape or of the pencil looks like this.`,
    todo: `Measure it again, or say yes if it is really so.`,
  }),
})

export const oneFaceMeasured = messageKind<{ measured: string; missing: string }>({
  code: 'N2',
  weight: 'note',
  source: PRACTICE,
  says: (v) => ({
    short: `Widths were measured only at the ${v.measured}.`,
    why: `They stand for the ${v.missing} too, and the returns count as square where that was not measured.`,
    todo: `Measure the width at the ${v.missing} at the same heights.`,
  }),
})

export const leanSplit = messageKind<{ most: string }>({
  code: 'N3',
  weight: 'note',
  source: PRACTICE,
  says: (v) => ({
    short: 'No lean was measured: the change of width is split evenly between both sides.',
    why: `The widths at the back change by up to ${v.most} with height.`,
    todo: 'Hold a level or plumb line on one return and enter how far it leans in at each height.',
  }),
})

export const squareSplit = messageKind<{ most: string }>({
  code: 'N4',
  weight: 'note',
  source: PRACTICE,
  says: (v) => ({
    short: 'Square was not measured: the taper to the front is split evenly between both sides.',
    why: `Back and front widths differ by up to ${v.most}.`,
    todo: 'Hold a square on the back wall in one corner and enter the offset at the front edge.',
  }),
})

export const unusableSurvey = messageKind<{ what: string; is: string; allowed: string }>({
  code: 'S20',
  weight: 'stop',
  source: PRACTICE,
  says: (v) => ({
    short: `${v.what} is ${v.is}.`,
    why: `${v.allowed}.`,
    todo: 'Look at the tape again and type it once more.',
  }),
})
