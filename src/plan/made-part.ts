import type { Part } from '../things/part.ts'

/** What a step says about a part; the rest is what most parts are: one piece, sawn at its finished size, made here. */
export type MadePart = Omit<
  Part,
  'quantity' | 'roughLength' | 'roughWidth' | 'leaveLong' | 'grain' | 'cutOuts' | 'supply' | 'details'
> &
  Partial<Pick<Part, 'quantity' | 'roughLength' | 'roughWidth' | 'leaveLong' | 'details'>>

/** A part cut from MDF or softwood in this shop, without grain to mind. */
export const madePart = (part: MadePart): Part => ({
  quantity: 1,
  roughLength: part.length,
  roughWidth: part.width,
  leaveLong: '',
  grain: 'none',
  cutOuts: [],
  supply: 'made',
  details: [],
  ...part,
})
