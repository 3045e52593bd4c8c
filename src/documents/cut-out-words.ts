import { NAILER_NOTCH } from '../plan/boxes/inside-parts.ts'
import { LIGHT_CUT } from '../plan/lights/light-cuts.ts'
import type { CutOut } from '../things/part.ts'
import type { PlainShow } from './job-words.ts'

/** A cut-out set out from the edges of its part, as one sentence. */
export const cutOutWords = (cut: CutOut, show: PlainShow): string =>
  `${cut.what}: from the left edge ${show.length(cut.x)}, from the lower edge ${show.length(cut.z)}; ` +
  `${show.length(cut.width)} wide, ${show.length(cut.height)} high`

/** Cut in the workshop, where the part alone says where: holes and grooves for lights, notches round a nailer. */
export const cutInShop = (cut: CutOut): boolean => cut.what.startsWith(LIGHT_CUT) || cut.what.startsWith(NAILER_NOTCH)
