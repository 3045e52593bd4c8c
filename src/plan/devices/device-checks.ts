import { rightOf, topOf } from '../../geometry/face-rectangle.ts'
import { boxWidths } from '../../job/chapters/cabinets.ts'
import { devices } from '../../job/chapters/wall-devices.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less, longest, shortest, sum, ZERO } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { cutOutMeetsPart, nailerCrossed } from './device-messages.ts'
import type { Opening } from './device-opening.ts'

interface Clash {
  readonly part: string
  readonly missing: Length
  readonly move: 'right' | 'left' | 'up' | 'down'
}

/** What the cut-out of a device meets in one box: sides, bottom and top stay clear of it by a web of wood. */
export function panelClashes(context: PlanContext, plan: BoxPlan, box: Box, opening: Opening): readonly Message[] {
  const keep = sum(plan.carcassThickness, context.figures.length('device.web'))
  const { at } = opening
  const found: readonly Clash[] = [
    { part: 'left side', missing: less(sum(box.x, keep), at.x), move: 'right' },
    { part: 'right side', missing: less(rightOf(at), less(sum(box.x, box.width), keep)), move: 'left' },
    { part: 'bottom', missing: less(sum(box.z, keep), at.z), move: 'up' },
    { part: 'top', missing: less(topOf(at), less(sum(box.z, box.height), keep)), move: 'down' },
    ...partitionClashes(context, plan, box, opening),
  ]
  return found
    .filter((clash) => clash.missing > 0)
    .map((clash) => {
      const fix = clash.part.endsWith('side') ? otherWidths(context, plan, box, opening) : []
      return raise(
        cutOutMeetsPart,
        {
          about: questionKey(box.run.bay.id, devices),
          place: `${box.run.bay.name}, box ${box.number}`,
          part: `${box.id}/back`,
          fixes: fix,
        },
        {
          device: opening.says,
          part: `${clash.part} of box ${box.number}`,
          missing: context.show.withUnit(clash.missing),
          todo: todoFor(context, clash, fix),
        },
      )
    })
}

/** Dividers and fixed shelves in the box: the smaller of the two ways past each of them. */
function partitionClashes({ figures }: PlanContext, plan: BoxPlan, box: Box, { at }: Opening): readonly Clash[] {
  const web = figures.length('device.web')
  const past = (
    panel: { readonly part: string; readonly from: Length; readonly to: Length },
    device: { readonly from: Length; readonly to: Length },
    ways: readonly [Clash['move'], Clash['move']],
  ): readonly Clash[] => {
    const [forth, back] = [less(sum(panel.to, web), device.from), less(device.to, less(panel.from, web))]
    if (forth <= 0 || back <= 0) return []
    return [{ part: panel.part, missing: shortest(forth, back), move: forth <= back ? ways[0] : ways[1] }]
  }
  const across = { from: at.x, to: rightOf(at) }
  const up = { from: at.z, to: topOf(at) }
  const placed = (part: string, from: Length) => ({ part, from, to: sum(from, plan.carcassThickness) })
  return [
    ...box.dividers.flatMap((x) => past(placed('divider', sum(box.x, x)), across, ['right', 'left'])),
    ...box.fixedShelves.flatMap(({ from }) => past(placed('fixed shelf', sum(box.z, from)), up, ['up', 'down'])),
  ]
}

function todoFor({ show, cut }: PlanContext, clash: Clash, fixes: readonly Fix[]): string {
  const shift = `have the device moved ${clash.move} by ${show.withUnit(cut.up(clash.missing))}`
  const [fix] = fixes
  return fix === undefined ? `${capital(shift)}, by a licensed trade.` : `${capital(fix.says)}, or ${shift}.`
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** Other widths of this run with a joint moved clear of the cut-out: the smallest move that leaves every box buildable. */
function otherWidths(context: PlanContext, plan: BoxPlan, box: Box, opening: Opening): readonly Fix[] {
  const { figures, cut, show } = context
  const run = plan.boxes.filter((b) => b.run === box.run)
  const keep = sum(plan.carcassThickness, figures.length('device.web'))
  const moves = run.slice(0, -1).flatMap((b, i) => {
    const joint = sum(b.x, b.width)
    return [less(opening.at.x, keep), sum(rightOf(opening.at), keep)].map((to, way) => {
      const by = way === 0 ? cut.down(less(to, joint)) : cut.up(less(to, joint))
      return run.map((r, j) => sum(r.width, j === i ? by : ZERO, j === i + 1 ? less(ZERO, by) : ZERO))
    })
  })
  const fits = (widths: readonly Length[]) =>
    widths.every((w) => w >= figures.length('box.least') && w <= figures.length('box.most')) &&
    clearOfSides(widths, run[0]?.x ?? ZERO, keep, opening)
  const moved = (widths: readonly Length[]) => longest(ZERO, ...widths.map((w, i) => less(w, run[i]?.width ?? ZERO)))
  const [best] = moves.filter(fits).toSorted((a, b) => moved(a) - moved(b))
  return best === undefined
    ? []
    : [
        {
          says: `make the boxes ${best.map(show.length).join(' and ')} wide`,
          answers: [{ key: questionKey(box.run.bay.id, boxWidths), value: best }],
        },
      ]
}

/** Whether an opening lies inside one box of these widths, clear of its sides. */
function clearOfSides(widths: readonly Length[], start: Length, keep: Length, { at }: Opening): boolean {
  return widths.some((width, i) => {
    const x = sum(start, ...widths.slice(0, i))
    return at.x >= sum(x, keep) && rightOf(at) <= less(sum(x, width), keep)
  })
}

/** A cut-out across a nailer: notch it while enough of its height stays, else move it. */
export function nailerNotes(context: PlanContext, plan: BoxPlan, box: Box, opening: Opening): readonly Message[] {
  const { figures, show } = context
  const nailers = plan.contribution.parts.filter((p) => p.id.startsWith(`${box.id}/nailer`))
  return nailers.flatMap((nailer) => {
    const { z, dz } = nailer.placement
    const top = sum(z, dz)
    if (opening.at.z >= top || topOf(opening.at) <= z) return []
    const left = longest(ZERO, less(opening.at.z, z), less(top, topOf(opening.at)))
    const notch = left >= figures.length('nailer.notch-least')
    return [
      raise(
        nailerCrossed,
        { about: questionKey(box.run.bay.id, devices), place: box.run.bay.name, part: nailer.id },
        {
          device: opening.says,
          box: box.mark,
          left: show.withUnit(left),
          todo: notch
            ? 'Notch the nailer round the cut-out.'
            : 'Move the nailer below the cut-out before the box is glued up.',
        },
      ),
    ]
  })
}
