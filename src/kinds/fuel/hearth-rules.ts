import { type CodeProfile, codeFigure } from '../../figures/code-profiles.ts'
import type { Figures } from '../../figures/figures.ts'
import { type Length, longest, NM_PER_INCH, ZERO } from '../../units/length.ts'

/** Floor that stays free of wood in front of an opening and to each side of it. */
export interface HearthZone {
  readonly front: Length
  readonly side: Length
}

/** What a hearth rule looks at. */
export interface HearthFacts {
  readonly width: Length
  readonly height: Length
  /** Whether the fire can throw sparks into the room. */
  readonly flame: 'open' | 'closed'
  readonly figures: Figures
}

type RuleOf = (facts: HearthFacts, profile: CodeProfile) => HearthZone

/** What a profile asks of the hearth, by the shape of its rule. */
const HEARTH_RULES: Readonly<Record<CodeProfile['hearth']['rule'], RuleOf>> = {
  fixed: ({ figures }, profile) => zone(figures, profile, { front: 'front', side: 'side' }),
  'by flame': ({ figures, flame }, profile) => zone(figures, profile, { front: `front-${flame}`, side: 'side' }),
  'by opening': (facts, profile) => {
    const size = isLarge(facts, facts.figures.number(codeFigure(profile.id, 'hearth', 'large-from')))
      ? 'large'
      : 'small'
    return zone(facts.figures, profile, { front: `front-${size}`, side: `side-${size}` })
  },
}

/** Hearth zone that every profile given asks for: the widest of them on each side. Without a profile there is none. */
export function hearthZoneOf(facts: HearthFacts, profiles: readonly CodeProfile[]): HearthZone {
  const zones = profiles.map((profile) => HEARTH_RULES[profile.hearth.rule](facts, profile))
  return {
    front: longest(ZERO, ...zones.map(({ front }) => front)),
    side: longest(ZERO, ...zones.map(({ side }) => side)),
  }
}

/** Whether width × height reaches an area in square inches: exactly that area counts as large. Whole numbers throughout. */
const isLarge = ({ width, height }: HearthFacts, squareInches: number): boolean =>
  BigInt(width) * BigInt(height) * THOUSAND >= BigInt(Math.round(squareInches * Number(THOUSAND))) * SQUARE_INCH

const SQUARE_INCH = BigInt(NM_PER_INCH) ** 2n
const THOUSAND = 1000n

const zone = (figures: Figures, { id }: CodeProfile, value: { readonly front: string; readonly side: string }) => ({
  front: figures.length(codeFigure(id, 'hearth', value.front)),
  side: figures.length(codeFigure(id, 'hearth', value.side)),
})
