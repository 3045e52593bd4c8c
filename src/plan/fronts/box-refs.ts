import type { Ref } from '../../things/formula.ts'

/** Where the sizes of a box come from, for what is worked out from them. */
export const BOX_WIDTH: readonly Ref[] = [{ id: 'boxes.widths' }, { id: 'boxWidths' }]
export const BOX_HEIGHT: readonly Ref[] = [{ id: 'box.height' }, { id: 'boxHeight' }, { id: 'tallHeight' }]
export const BOX_BOTTOM: readonly Ref[] = [{ id: 'box.bottom' }, { id: 'levels.plinth' }, { id: 'kick' }]
