import type { Part, Role } from '../../things/part.ts'
import type { RequestLine } from '../../things/request.ts'
import type { Show } from '../../things/show.ts'

/** What a part is, for deciding who makes it. */
export interface PartPlace {
  readonly role: Role | undefined
  readonly ofBox: boolean
  /** Which of several pieces it is; undefined for a thing of one piece. */
  readonly piece?: string | undefined
}

/** What the rest of the plan asks of something that can be bought in or done outside. */
export interface SupplyKind {
  readonly id: 'boxes' | 'fronts' | 'spraying'
  readonly says: string
  /** Title of the request. */
  readonly title: string
  /** Whether it takes a part out of the cut list when it is bought. */
  readonly takes: (part: PartPlace) => boolean
  /** What the quote counts: each piece asked for, or the coated area. */
  readonly pricedBy: 'piece' | 'area'
  /** Rows of `shared/figures`: the price and the lead time used until a quote is here. */
  readonly price: string
  readonly lead: string
  /** What is asked for, one line a piece; the parts are those it takes (for spraying, the coated ones). */
  readonly lines: (parts: readonly Part[], show: Show) => readonly RequestLine[]
  /** The finish asked for, one sentence each; `colour` is empty when nobody has named it; the parts are those it takes. */
  readonly finish: (colour: string, parts: readonly Part[]) => readonly string[]
}
