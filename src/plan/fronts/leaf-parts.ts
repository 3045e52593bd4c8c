import type { LeafPiece } from '../../kinds/front/contract.ts'
import { within } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { checkWords } from './door-choices.ts'
import { frontParts } from './front-parts.ts'
import type { Leaf } from './fronts.ts'
import type { LeafMake } from './leaves.ts'

/** The pieces of one leaf as parts. */
export const leafParts = (context: PlanContext, make: LeafMake, leaf: Leaf): readonly Part[] =>
  within(leaf.id, () =>
    frontParts(context, make, leaf, {
      name: 'door',
      goesTo: `${leaf.box.run.bay.name}, box ${leaf.box.number}, hinged ${leaf.hingeSide}`,
      drilling: (piece) => drilling(context, make, leaf, piece),
    }),
  )

function drilling(context: PlanContext, make: LeafMake, leaf: Leaf, piece: LeafPiece): readonly string[] {
  const { show } = context
  const handleSide = leaf.hingeSide === 'left' ? 'right' : 'left'
  const carries = (side: 'left' | 'right') => piece.carries === 'whole' || piece.carries === `${side} edge`
  const row = (lengths: readonly Length[]) => lengths.map((l) => show.length(l)).join(', ')
  const { diameter, fromEdge, depth, known } = make.cup
  return [
    ...(carries(leaf.hingeSide)
      ? [
          `hinge cups ${show.withUnit(diameter)} wide, ${show.withUnit(depth)} deep, at ${row(leaf.cups)} from the lower end, centre ${show.withUnit(fromEdge)} from the ${leaf.hingeSide} edge${checkWords(known, 'hinge')}`,
          `hinges for an overlay of ${show.withUnit(leaf.overlay)}${leaf.arm === undefined ? '' : `: ${leaf.arm}`}`,
        ]
      : []),
    ...(carries(handleSide)
      ? leaf.handleHoles.map(
          (hole) =>
            `handle hole ${show.withUnit(hole.fromTop)} from the top, ${show.withUnit(hole.fromHandleEdge)} from the ${handleSide} edge`,
        )
      : []),
  ]
}
