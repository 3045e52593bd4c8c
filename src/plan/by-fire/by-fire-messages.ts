import { messageKind } from '../../things/message.ts'

export const runInHearthZone = messageKind<{
  front: string
  side: string
  by: string
  part: string
  aside: string
  rule: string
}>({
  code: 'S12',
  weight: 'stop',
  source: 'the code chosen, as named in the message; the local code and its inspector decide',
  says: (v) => ({
    short: `The run reaches into the hearth zone of the fire: the ${v.part} stands ${v.aside} beside the opening.`,
    why: `No wood stands within ${v.front} in front of the opening and ${v.side} beside it; the run stands ${v.by} in front of the breast there. Rule: ${v.rule}.`,
    todo: `Keep boxes, doors, fillers and plinth behind the breast face: ${v.by} shallower.`,
  }),
})

export const fireBesideNotMeasured = messageKind<{ by: string }>({
  code: 'C14',
  weight: 'confirm',
  source: 'the code chosen for wood near the fire',
  says: (v) => ({
    short: `The run stands ${v.by} in front of the breast, and the fire beside it is not fully measured.`,
    why: 'Its distance is checked against an open fire with a wide opening in the middle; the real one may be nearer.',
    todo: 'Measure opening and breast and say what burns there: the parts that stand out wait for it.',
  }),
})
