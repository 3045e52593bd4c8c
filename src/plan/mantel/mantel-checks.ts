import { separationOf } from '../../geometry/face-rectangle.ts'
import { mantelDepth, mantelFrieze, mantelLength, mantelUnderside } from '../../job/chapters/mantel.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less, sum, times } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import { piecesTooClose, type TooClose, woodTooClose } from './clearance.ts'
import type { Firebox } from './firebox.ts'
import { deepMantelLow, mantelPastBreast, mantelTooShallow } from './mantel-messages.ts'
import { leastMantel } from './mantel-parts.ts'
import { beamPieces, type ChosenMantel, type MantelSize } from './mantel-size.ts'

/** What is wrong with the beam and top of a mantel: too near the fire, past the breast, too small to be built. */
export function beamMessages(
  context: PlanContext,
  wall: BreastWall,
  fire: Firebox,
  chosen: ChosenMantel,
): readonly Message[] {
  const near = tooClose(context, wall, fire, chosen)
  return [
    ...near,
    ...pastBreast(context, wall, chosen.size),
    ...tooShallow(context, wall, chosen.size),
    ...(near.length > 0 ? [] : deepAndLow(context, wall, fire, chosen.size)),
  ]
}

function tooClose(context: PlanContext, wall: BreastWall, fire: Firebox, chosen: ChosenMantel): readonly Message[] {
  const { show } = context
  if (fire.opening === undefined) return []
  return piecesTooClose(fire.opening, beamPieces(chosen.size), fire.rules).map((close) =>
    raise(
      woodTooClose,
      {
        about: questionKey(wall.bay.id, mantelUnderside),
        place: wall.bay.name,
        part: `${wall.bay.id}/mantel/frieze`,
        fixes: fixesFor(context, wall, chosen, close),
      },
      {
        piece: close.piece.what,
        out: show.withUnit(close.piece.standsOut),
        distance: show.withUnit(close.distance),
        most: mostText(context, close),
        rule: close.rule.says,
        nearest: nearestThatPasses(context, chosen, close),
      },
    ),
  )
}

/** What a rule leaves a piece, in words. */
export const mostText = ({ show, cut }: PlanContext, { mostOut }: TooClose): string =>
  mostOut === 'none' ? 'no wood at all' : `${show.withUnit(cut.down(mostOut))} at most`

function nearestThatPasses({ show, cut }: PlanContext, chosen: ChosenMantel, close: TooClose): string {
  const raised = chosen.lowest === undefined ? [] : [`raise the underside to ${show.withUnit(chosen.lowest)}`]
  const shallower =
    close.mostOut === 'none' ? [] : [`let it stand out ${show.withUnit(cut.down(close.mostOut))} or less`]
  const text = [...raised, ...shallower].join(', or ')
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}. The local code and the manual may ask for more.`
}

function fixesFor(context: PlanContext, wall: BreastWall, chosen: ChosenMantel, close: TooClose): readonly Fix[] {
  const { show, cut } = context
  const at = (field: Parameters<typeof questionKey>[1], value: Length) => [
    { key: questionKey(wall.bay.id, field), value },
  ]
  const raised =
    chosen.lowest === undefined
      ? []
      : [{ says: `underside at ${show.withUnit(chosen.lowest)}`, answers: at(mantelUnderside, chosen.lowest) }]
  if (close.mostOut === 'none') return raised
  const behindTop = less(chosen.size.depth, close.piece.standsOut)
  const depth = cut.down(sum(close.mostOut, behindTop))
  return depth < leastMantel(context, chosen.size.panel).depth
    ? raised
    : [...raised, { says: `mantel ${show.withUnit(depth)} deep`, answers: at(mantelDepth, depth) }]
}

function pastBreast({ figures, show, cut }: PlanContext, wall: BreastWall, size: MantelSize): readonly Message[] {
  const longestInside = cut.down(less(wall.width, times(figures.length('mantel.breast-clear'), 2)))
  if (size.length <= longestInside) return []
  const values = {
    length: show.withUnit(size.length),
    breast: show.withUnit(wall.width),
    longest: show.withUnit(longestInside),
  }
  return [raise(mantelPastBreast, { about: questionKey(wall.bay.id, mantelLength), place: wall.bay.name }, values)]
}

function tooShallow(context: PlanContext, wall: BreastWall, size: MantelSize): readonly Message[] {
  const { show } = context
  const least = leastMantel(context, size.panel)
  const checks = [
    { field: mantelDepth, what: 'deep', is: size.depth, least: least.depth },
    { field: mantelFrieze, what: 'high at its frieze', is: size.frieze, least: least.frieze },
  ]
  return checks
    .filter((c) => c.is < c.least)
    .map((c) => {
      const key = questionKey(wall.bay.id, c.field)
      const fix = { says: `${show.withUnit(c.least)} ${c.what}`, answers: [{ key, value: c.least }] }
      return raise(
        mantelTooShallow,
        { about: key, place: wall.bay.name, fixes: [fix] },
        { what: c.what, is: show.withUnit(c.is), least: show.withUnit(c.least) },
      )
    })
}

/** A table stricter than any code is worth a word where a deep mantel meets the code and not the table: the worst piece. */
function deepAndLow(
  { figures, show }: PlanContext,
  { bay }: BreastWall,
  { opening, fuel }: Firebox,
  size: MantelSize,
): readonly Message[] {
  if (opening === undefined || !fuel.burns) return []
  const more = figures.length('mantel.deep-over')
  const found = beamPieces(size)
    .filter(({ standsOut }) => standsOut >= figures.length('mantel.deep-from'))
    .map(({ what, at, standsOut }) => ({ what, above: separationOf(opening, at).above, wanted: sum(standsOut, more) }))
    .filter(({ above, wanted }) => above < wanted)
    .toSorted((a, b) => less(b.wanted, b.above) - less(a.wanted, a.above))
  return found.slice(0, 1).map(({ what, above, wanted }) =>
    raise(
      deepMantelLow,
      { about: questionKey(bay.id, mantelUnderside), place: bay.name },
      {
        piece: what,
        is: show.withUnit(above),
        wanted: show.withUnit(wanted),
        by: show.withUnit(less(wanted, above)),
      },
    ),
  )
}
