import type { CodeProfile } from '../../figures/code-profiles.ts'
import type { Figures } from '../../figures/figures.ts'
import { opening } from '../../job/chapters/firebox.ts'
import { type HearthZone, hearthZoneOf } from '../../kinds/fuel/hearth-rules.ts'
import { formula } from '../../things/formula.ts'
import type { Length } from '../../units/length.ts'

/** Floor that stays free of wood in front of an opening and at each side of it: the widest any of the profiles asks for. */
export const hearthZone = formula(
  {
    id: 'hearth.zone',
    plain:
      'what the code asks in front and at each side, by the opening or by what burns; the widest while no code is known',
    source: 'the code chosen, its figures in shared/codes.json',
    from: { openingWidth: opening, openingHeight: opening },
  },
  (of: {
    readonly openingWidth: Length
    readonly openingHeight: Length
    readonly flame: 'open' | 'closed'
    readonly profiles: readonly CodeProfile[]
    readonly figures: Figures
  }): HearthZone =>
    hearthZoneOf(
      { width: of.openingWidth, height: of.openingHeight, flame: of.flame, figures: of.figures },
      of.profiles,
    ),
)
