import { messageKind } from '../../things/message.ts'

const SOURCE = 'geometry; play at each side is common practice, no source'

interface NotIn extends Readonly<Record<string, number | string>> {
  readonly what: string
  /** What each may be at most, in words. */
  readonly most: string
  readonly way: string
}

export const boxDoesNotComeIn = messageKind<NotIn>({
  code: 'C18',
  weight: 'confirm',
  source: SOURCE,
  says: ({ what, most, way }) => ({
    short: `Too large to be carried in as a box: ${what}.`,
    why: `The way in is ${way}. What passes: ${most}.`,
    todo: 'Confirm that they are put together in the room from their panels (planned so, with its hours), or make them smaller.',
  }),
})

export const pieceDoesNotComeIn = messageKind<NotIn>({
  code: 'C20',
  weight: 'confirm',
  source: SOURCE,
  says: ({ what, most, way }) => ({
    short: `Too long to be carried in whole: ${what}.`,
    why: `The way in is ${way}. What passes: ${most}.`,
    todo: 'Confirm that it is made in pieces joined where it stands, or comes in another way, such as a window.',
  }),
})

export const sheetDoesNotComeIn = messageKind<NotIn>({
  code: 'N28',
  weight: 'note',
  source: SOURCE,
  says: ({ what, most, way }) => ({
    short: `A whole sheet is too large to be carried in: ${what}.`,
    why: `The way in is ${way}. What passes: ${most}.`,
    todo: 'Saw in the workshop or outside, or have sheets cut down where they are bought.',
  }),
})
