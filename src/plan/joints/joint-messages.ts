import { messageKind } from '../../things/message.ts'

/** A gap wider than caulk over backer rod can close. */
export const gapTooWide = messageKind<{
  readonly where: string
  readonly gap: string
  readonly most: string
  readonly over: string
}>({
  code: 'S21',
  weight: 'stop',
  source: 'common practice, no source',
  says: ({ where, gap, most, over }) => ({
    short: `The joint ${where} is too wide to caulk.`,
    why: `The gap is ${gap}; caulk over backer rod closes at most ${most}.`,
    todo: `Make the gap ${over} narrower, or close it with a scribed filler or a moulding.`,
  }),
})

/** Joints of one bay that take more passes than a person wants to come back for. */
export const manyPasses = messageKind<{
  readonly joints: string
  readonly where: string
  readonly passes: number
  readonly most: number
}>({
  code: 'C9',
  weight: 'confirm',
  source: 'common practice, no source',
  says: ({ joints, where, passes, most }) => ({
    short: `${joints} ${passes} passes of caulk.`,
    why: `Where: ${where}. Caulk sinks as it dries; more than ${most} passes are more than ${most} evenings, each dry before the next.`,
    todo: 'Fill the depth with backer rod, choose a caulk that shrinks less, or make the gap narrower.',
  }),
})
