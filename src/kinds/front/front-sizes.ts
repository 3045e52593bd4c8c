import { formula, type Ref } from '../../things/formula.ts'
import { type Length, over } from '../../units/length.ts'

/** Where the outside of a front may come from: a leaf or a drawer front. */
export const FRONT_WIDTH: readonly Ref[] = [{ id: 'fronts.leaf-width' }, { id: 'fronts.drawer-front-width' }]
export const FRONT_HEIGHT: readonly Ref[] = [
  { id: 'fronts.leaf-height' },
  { id: 'fronts.face-height' },
  { id: 'fronts.drawer-front-height' },
]
/** Width of stiles and rails: asked, or the usual one. */
export const STILE: readonly Ref[] = [{ id: 'stileWidth' }, { id: 'door.stile' }]

/** A handle stands on the middle of the stile. */
export const onStile = formula<{ stile: Length }, Length>(
  { id: 'fronts.handle-in', plain: 'stile ÷ 2', source: 'common practice, no source', from: { stile: STILE } },
  ({ stile }) => over(stile, 2),
)
