import type { CodeProfile } from '../../figures/code-profiles.ts'
import { codeFigure } from '../../figures/code-profiles.ts'
import { boxKind } from '../../job/chapters/cabinets.ts'
import { linings } from '../../job/chapters/firebox.ts'
import { shelfCount } from '../../job/chapters/shelves.ts'
import type { Lining } from '../../kinds/fuel/face-rule.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import { type Length, less, longest, shortest, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BesideBreast } from './beside-breast.ts'
import type { BesideFire } from './beside-fire.ts'

export const woodAgainstBreast = messageKind<{
  bays: string
  nearest: string
  rule: string
  pieces: string
  masonry: string
  gap: string
  move: string
}>({
  code: 'C12',
  weight: 'confirm',
  source: 'the code chosen, as named in the message; local code, the appliance manual and licensed practice govern',
  says: (v) => ({
    short: `Wood of the ${v.bays} stands ${v.nearest} the side of the breast.`,
    why: `Masonry round a fire and its flue grows hot. ${v.rule}. Masonry there: ${v.masonry}. Nobody decides here whether the breast and its lining are sound.`,
    todo: `Measure the masonry from inside the lining and enter it. Too thin: end these pieces ${v.gap} off, which moves the nearest by ${v.move}, and close the gap with something that does not burn. Pieces and their gaps: ${v.pieces}.`,
  }),
})

export const woodInHotMasonry = messageKind<{
  piece: string
  is: string
  rule: string
  masonry: string
  gap: string
  move: string
  pieces: string
}>({
  code: 'S26',
  weight: 'stop',
  source: 'the code chosen, as named in the message; local code, the appliance manual and licensed practice govern',
  says: (v) => ({
    short: `The ${v.piece} stands ${v.is} the breast’s side, whose masonry is too thin there.`,
    why: `Wood against hot masonry chars for years before it burns. ${v.rule}. Masonry as measured: ${v.masonry}.`,
    todo: `Nothing of wood within ${v.gap} of that side: the nearest would move by ${v.move}, the gap closed with something that does not burn; else nothing is built here. Pieces and their gaps: ${v.pieces}.`,
  }),
})

/** Parts of one bay beside one fire. */
export interface NearBreast {
  readonly here: BesideFire
  readonly found: readonly BesideBreast[]
}

/** One question for each breast, about all wood at its sides; and a stop for each bay whose wood is too near as measured. */
export function besideBreastMessages(context: PlanContext, near: readonly NearBreast[]): readonly Message[] {
  const breasts = [...new Set(near.map(({ here }) => here.breast))]
  return [
    ...near.flatMap(({ here, found }) =>
      tooNear(
        context,
        here,
        found.filter((f) => f.verdict === 'stop'),
      ),
    ),
    ...breasts.flatMap((breast) =>
      asked(
        context,
        near
          .filter(({ here }) => here.breast === breast)
          .map(({ here, found }) => ({ here, found: found.filter((f) => f.verdict === 'ask') }))
          .filter(({ found }) => found.length > 0),
      ),
    ),
  ]
}

function asked(context: PlanContext, near: readonly NearBreast[]): readonly Message[] {
  const [first] = near
  if (first === undefined) return []
  const { breast, fire } = first.here
  const all = near.flatMap(({ found }) => found)
  return [
    raise(
      woodAgainstBreast,
      { about: questionKey(breast.bay.id, linings), place: breast.bay.name },
      {
        bays: near.map(({ here }) => here.beside.bay.name).join(' and '),
        nearest: standsText(context, leastGap(all)),
        ...keptOff(context, fire.profiles, all),
        pieces: piecesText(context, all),
        masonry: near.map(({ here }) => masonryText(context, here)).join('; '),
      },
    ),
  ]
}

function tooNear(context: PlanContext, here: BesideFire, found: readonly BesideBreast[]): readonly Message[] {
  const [nearest] = found.toSorted((a, b) => a.gap - b.gap)
  if (nearest === undefined) return []
  const { bay } = here.beside
  const nothing = [
    { key: questionKey(bay.id, boxKind), value: 'none' },
    { key: questionKey(bay.id, shelfCount), value: 0 },
  ]
  return [
    raise(
      woodInHotMasonry,
      {
        about: questionKey(here.breast.bay.id, linings),
        place: bay.name,
        part: nearest.part.id,
        fixes: [{ says: 'no boxes and no shelves here', answers: nothing }],
      },
      {
        piece: `${nearest.part.name} ${nearest.part.mark}`,
        is: standsText(context, nearest.gap),
        ...keptOff(context, here.fire.profiles, found),
        masonry: masonryText(context, here),
        pieces: piecesText(context, found),
      },
    ),
  ]
}

function leastGap(found: readonly BesideBreast[]): Length {
  const [first = ZERO, ...others] = found.map(({ gap }) => gap)
  return shortest(first, ...others)
}

/** The widest gap the codes ask for, and how far the nearest piece is from it. */
function keptOff(
  { figures, show, cut }: PlanContext,
  profiles: readonly CodeProfile[],
  found: readonly BesideBreast[],
) {
  const gap = longest(ZERO, ...profiles.map(({ id }) => figures.length(codeFigure(id, 'faces', 'gap'))))
  return {
    rule: profiles.map(({ faces }) => faces.says).join('; '),
    gap: show.withUnit(gap),
    move: show.withUnit(longest(ZERO, cut.up(less(gap, leastGap(found))))),
  }
}

/** `against`, or `1/16 in from`. */
function standsText(context: PlanContext, gap: Length): string {
  const shown = context.cut.down(gap)
  return shown === 0 ? 'against' : `${context.show.withUnit(shown)} from`
}

const gapText = ({ show, cut }: PlanContext, gap: Length): string => show.withUnit(cut.down(gap))

/** `wall filler 0 in, shelf cleat 1/16 in`: pieces by name, each with its least gap. */
function piecesText(context: PlanContext, found: readonly BesideBreast[]): string {
  const names = [...new Set(found.map(({ part }) => part.name))]
  return names
    .map((name) => {
      const own = found.filter(({ part }) => part.name === name)
      return `${name} ${gapText(context, leastGap(own))}`
    })
    .join(', ')
}

function masonryText(context: PlanContext, { fire, side }: BesideFire): string {
  const { firebox, flue } = fire.masonry[side]
  return `${side}, firebox ${liningText(context, firebox)}, flue ${liningText(context, flue)}`
}

function liningText({ show }: PlanContext, { masonry, known }: Lining): string {
  if (masonry === undefined) return 'not measured'
  return known === 'measured' ? show.withUnit(masonry) : `${show.withUnit(masonry)} to the opening’s edge`
}
