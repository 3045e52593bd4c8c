import { baseboardFate } from '../../job/chapters/cabinets.ts'
import { houseYear, leadTested } from '../../job/chapters/job.ts'
import { leadEarlier, leadFirm, removals } from '../../job/chapters/removal.ts'
import { OLD_FIXINGS, REMOVALS } from '../../kinds/removal/list.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { formula } from '../../things/formula.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Area, SQUARE_METRES_PER_SQUARE_FOOT, squareMetres } from '../../units/area.ts'
import type { PlanContext } from '../context.ts'
import {
  leadFirmNamed,
  mayHoldAsbestos,
  oldPieceMayHoldLead,
  overMinorWork,
  paintDemolished,
  paintMayHoldLead,
} from './old-paint-messages.ts'
import type { OldPiece } from './old-piece.ts'
import type { OldTrim } from './old-trim.ts'

/** What old paint and old boards ask of this job. */
export interface OldPaint {
  /** Built before the year of the rule or not known and not tested free of lead, or an old painted piece in it. */
  readonly mayHoldLead: boolean
  /** Whether the work cuts, strips or scrapes anything painted. */
  readonly disturbs: boolean
  /** Old painted surface that comes off, m². */
  readonly area: Area
  /** The certified firm and renovator named for it. */
  readonly firm: string | undefined
  readonly mayHoldAsbestos: boolean
  readonly messages: readonly Message[]
}

/** What is disturbed: trim and pieces that come off, and masonry that is washed and drilled. */
export interface Disturbance {
  readonly trim: OldTrim
  readonly pieces: readonly OldPiece[]
  readonly scraped: boolean
}

/** The lead and asbestos check: asked always, said when something old is disturbed. */
export function oldPaint(context: PlanContext, work: Disturbance): OldPaint {
  const age = ageOf(context)
  const painted = work.pieces.filter((p) => p.coated > 0 && fromBefore(p.row.year, age.limitYear))
  const pieces = age.houseMayHoldLead ? painted : painted.filter((p) => p.row.year !== undefined)
  const area = disturbedArea({
    trim: work.trim.area,
    pieces: squareMetres(pieces.reduce((m2, p) => m2 + p.coated, 0)),
    earlier: age.earlier,
  })
  const disturbs = work.trim.area > 0 || work.pieces.length > 0 || work.scraped
  const boards = oldBoards(context, work.pieces, age)
  const disturbed: Disturbed = { work, pieces, area, firm: age.firm }
  const lead = age.houseMayHoldLead
    ? houseMessages(context, disturbed, age)
    : pieces.length > 0
      ? [oldPiecesSaid(pieces, age)]
      : []
  return {
    mayHoldLead: age.houseMayHoldLead || pieces.length > 0,
    disturbs,
    area,
    firm: age.firm,
    mayHoldAsbestos: boards.length > 0,
    messages: disturbs ? [...lead, ...boards] : [],
  }
}

/** Old painted surface disturbed in one room within 30 days: trim, pieces and earlier work together. */
export const disturbedArea = formula<{ trim: Area; pieces: Area; earlier: Area }, Area>(
  {
    id: 'removal.disturbed-paint',
    plain: 'painted trim + whole painted pieces + what other work disturbed in this room within 30 days',
    source: '40 CFR 745.83',
    gives: 'area',
  },
  ({ trim, pieces, earlier }) => squareMetres(trim + pieces + earlier),
)

interface HouseAge {
  readonly year: number
  readonly limitYear: number
  readonly houseMayHoldLead: boolean
  readonly earlier: Area
  readonly firm: string | undefined
}

/** Young enough, or tested. The test, earlier work and the firm are only asked about in a house that is old or of unknown age. */
function ageOf(context: PlanContext): HouseAge {
  const { settle, figures } = context
  const limitYear = figures.number('lead.year')
  const { value: year } = settle.measured(houseYear, undefined, () => ({
    value: limitYear - 1,
    because: 'not known: treated as old',
  }))
  const young = { year, limitYear, houseMayHoldLead: false, earlier: squareMetres(0), firm: undefined }
  if (year >= limitYear) return young
  const tested = settle.measured(leadTested, undefined, () => ({
    value: false,
    because: 'paint that is not tested is handled as lead paint',
  }))
  if (tested.value) return young
  const squareFeet = settle.choice(leadEarlier, undefined, () => ({ value: 0, because: 'no other work was named' }))
  const firm = settle.choice(leadFirm, undefined, () => ({ value: '', because: 'nobody was named' })).trim()
  return {
    ...young,
    houseMayHoldLead: true,
    earlier: squareMetres(squareFeet * SQUARE_METRES_PER_SQUARE_FOOT),
    firm: firm === '' ? undefined : firm,
  }
}

/** A piece of unknown age may be as old as any. */
const fromBefore = (year: number | undefined, limit: number): boolean => year === undefined || year < limit

interface Disturbed {
  readonly work: Disturbance
  readonly pieces: readonly OldPiece[]
  readonly area: Area
  readonly firm: string | undefined
}

function houseMessages(context: PlanContext, disturbed: Disturbed, age: HouseAge): readonly Message[] {
  const { work, pieces, area, firm } = disturbed
  const where = { about: questionKey('job', leadTested), place: 'house' }
  const limit = context.figures.number('lead.minor-area')
  const broken = pieces.filter((p) => OLD_FIXINGS[p.row.fixing].brokenOut)
  const says = areaWords(context, area)
  const year = String(age.limitYear)
  const over = area > limit + HAIR
  if (firm !== undefined && (over || broken.length > 0))
    return [raise(leadFirmNamed, { about: questionKey('job', leadFirm), place: 'house' }, { area: says, firm })]
  if (broken.length > 0) {
    const enough = area - broken.reduce((m2, p) => m2 + p.coated, 0) <= limit + HAIR
    const fixes = enough ? [leftInPlace(context, broken)] : []
    return [raise(paintDemolished, { ...where, fixes }, { pieces: named(broken), year })]
  }
  const values = {
    area: says,
    what: area > 0 ? says : 'washing and drilling the masonry',
    limit: areaWords(context, limit),
    year,
  }
  if (!over) return [raise(paintMayHoldLead, where, values)]
  return [raise(overMinorWork, { ...where, fixes: work.trim.area > 0 ? [keepTheBoard()] : [] }, values)]
}

const keepTheBoard = () => ({
  says: 'keep the baseboard',
  answers: [{ key: questionKey('job', baseboardFate), value: 'keep' }],
})

/** What would be broken out stays where it is; the other old pieces of its bay still come off. */
const leftInPlace = ({ settle }: PlanContext, broken: readonly OldPiece[]): Fix => ({
  says: `leave in place: ${named(broken)}`,
  answers: [...new Set(broken.map((p) => p.bay))].map((bay) => ({
    key: questionKey(bay.id, removals),
    value: (settle.asked(removals, bay) ?? []).filter((row) => !broken.some((p) => p.bay === bay && p.row === row)),
  })),
})

const aboutPieces = ([first]: readonly OldPiece[]): { readonly about: QuestionKey; readonly place: string } => ({
  about: questionKey(first?.bay.id ?? 'job', removals),
  place: first?.bay.name ?? 'house',
})

const oldPiecesSaid = (pieces: readonly OldPiece[], age: HouseAge): Message =>
  raise(
    oldPieceMayHoldLead,
    { about: questionKey('job', houseYear), place: 'house' },
    { pieces: named(pieces), year: String(age.limitYear) },
  )

/** `mantel (breast), shelf (left alcove)` */
const named = (pieces: readonly OldPiece[]): string =>
  [...new Set(pieces.map((p) => `${REMOVALS[p.row.what].says} (${p.bay.name})`))].join(', ')

/** Old boards, ropes, adhesives and coatings among what comes off. */
function oldBoards(context: PlanContext, pieces: readonly OldPiece[], age: HouseAge): readonly Message[] {
  const limit = context.figures.number('asbestos.year')
  const old = pieces.filter((p) => REMOVALS[p.row.what].asbestos !== '' && (p.row.year ?? age.year) < limit)
  if (old.length === 0) return []
  const what = [...new Set(old.map((p) => REMOVALS[p.row.what].asbestos))].join(', ')
  return [raise(mayHoldAsbestos, aboutPieces(old), { what, year: String(limit) })]
}

/** Square metres lost in adding machine numbers: exactly the limit is within it. */
const HAIR = 1e-9

/** Two decimals: the limit is a small number. */
const areaWords = (context: PlanContext, area: Area | number): string =>
  context.show.units === 'inch' ? `${(area / SQUARE_METRES_PER_SQUARE_FOOT).toFixed(2)} sq ft` : `${area.toFixed(2)} m²`
