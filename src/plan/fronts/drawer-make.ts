import { chosenRow, SLIDES, type Slide, slideLengths } from '../../figures/hardware.ts'
import { drawerFrontStyle, drawerSide, slide, slideSheet } from '../../job/chapters/drawers.ts'
import type { FrontKind } from '../../kinds/front/contract.ts'
import { FRONTS } from '../../kinds/front/list.ts'
import { type Length, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { frontStyleOf, type SheetKnown } from './door-choices.ts'

/** How all drawers of the job are made and what they run on. */
export interface DrawerMake {
  readonly kind: FrontKind
  /** Thickness of the drawer box's sides and ends. */
  readonly side: Length
  readonly slide: Slide
  /** Drawer box narrower than the box inside, at each side. */
  readonly clear: Length
  /** Room under a drawer box. */
  readonly below: Length
  /** Screw line of the slide above the drawer box's lower edge. */
  readonly line: Length
  readonly bottomUp: Length
  readonly leastHeight: Length
  /** Lengths the slide is sold in, shortest first. */
  readonly lengths: readonly Length[]
  readonly known: SheetKnown
}

/** What is asked of drawers once; the slide's own sheet, or generic figures until it is there. */
export function drawerMakeOf(context: PlanContext): DrawerMake {
  const { figures, settle } = context
  const style = settle.choice(drawerFrontStyle, undefined, () => ({
    value: frontStyleOf(context),
    because: 'like the doors',
  }))
  const chosen = chosenRow(
    SLIDES,
    settle.choice(slide, undefined, () => ({ value: 'side', because: 'goes with any drawer box' })),
  )
  const of = (what: string) => figures.length(`slide.${chosen.id}.${what}`)
  const [clear = ZERO, below = ZERO, line = ZERO] = settle.choice(slideSheet, undefined, () => ({
    value: [of('clear'), of('below'), of('line')],
    origin: 'assumed',
    because: 'generic slide: check against its sheet',
  }))
  return {
    kind: FRONTS[style],
    side: settle.choice(drawerSide, undefined, () => ({
      value: figures.length('drawer.side'),
      origin: 'assumed',
      because: 'its name at the counter: put the caliper on it',
    })),
    slide: chosen,
    clear,
    below,
    line,
    bottomUp: of('bottom-up'),
    leastHeight: of('least-height'),
    lengths: slideLengths(chosen, figures.units),
    known: settle.asked(slideSheet, undefined) === undefined ? 'generic' : 'from its sheet',
  }
}
