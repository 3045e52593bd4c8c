import { type CodeProfile, codeFigure } from '../../figures/code-profiles.ts'
import type { Figures } from '../../figures/figures.ts'
import { type Length, sum } from '../../units/length.ts'

/** A piece of wood beside a masonry breast, as its side grows hot: low down by the firebox, higher up by the flue. */
export interface WoodBeside {
  /** Between the breast's side and the wood. */
  readonly gap: Length
  /** From the wood to the opening, along the wall; undefined while the opening is not measured. */
  readonly toOpening: Length | undefined
  /** Masonry from the inside of each lining to the breast's side, where the piece stands at that height; `measured` or only read off. */
  readonly linings: readonly Lining[]
}
export interface Lining {
  readonly of: 'firebox' | 'flue'
  /** Undefined = nobody knows. */
  readonly masonry: Length | undefined
  /** Measured by somebody, or taken from the opening's edge. */
  readonly known: 'measured' | 'from the opening'
}

/** passes: the rule is met as measured · ask: nobody has measured what decides · stop: measured, and too near. */
export type Verdict = 'passes' | 'ask' | 'stop'

/** What a profile says of a piece at the breast's side: its gap, or else the distance from each lining it stands beside. */
export function verdictOf(figures: Figures, profile: CodeProfile, wood: WoodBeside): Verdict {
  const read = (value: string): Length | undefined =>
    value in profile.faces.values ? figures.length(codeFigure(profile.id, 'faces', value)) : undefined
  const opening = read('from-opening')
  const nearOpening = opening !== undefined && (wood.toOpening === undefined || wood.toOpening < opening)
  const gap = read('gap')
  if (gap !== undefined && wood.gap >= gap) return nearOpening ? 'ask' : 'passes'
  const verdicts = wood.linings.map((lining) => liningVerdict(lining, wood.gap, read(`from-${lining.of}`)))
  if (verdicts.includes('stop')) return 'stop'
  return verdicts.includes('ask') || nearOpening ? 'ask' : 'passes'
}

/** A text that names no distance from this lining is asked about; so is a distance nobody has measured, unless it is wide enough. */
function liningVerdict({ masonry, known }: Lining, gap: Length, needed: Length | undefined): Verdict {
  if (needed === undefined || masonry === undefined) return 'ask'
  if (sum(masonry, gap) >= needed) return 'passes'
  return known === 'measured' ? 'stop' : 'ask'
}
