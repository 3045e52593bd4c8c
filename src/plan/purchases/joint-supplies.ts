import type { Purchase } from '../../things/supplies.ts'
import { minorUnits } from '../../units/money.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'

/** Caulk by colour, masking tape, backer rod. */
export const jointPurchases = (context: PlanContext, built: Built): readonly Purchase[] => [
  ...(['built-in', 'wall'] as const).map((colour) => caulk(context, built, colour)),
  tape(context, { id: 'tape', item: 'masking tape, plain: the caulk seals its edge', metres: built.joints.tape }),
  tape(context, {
    id: 'tape.sharp',
    item: 'sharp-line tape, where paint alone makes the line',
    metres: built.joints.sharpLineTape,
  }),
  ...built.joints.rods.map((rod, at) => rodPurchase(context, rod, at + 1)),
]

function caulk({ figures }: PlanContext, built: Built, colour: 'built-in' | 'wall'): Purchase {
  const cartridge = figures.number('pack.caulk')
  const litres = built.joints.caulk[colour]
  const cartridges = Math.ceil(litres / cartridge)
  const spare = cartridges > figures.number('pack.caulk-spare-over') ? 1 : 0
  return {
    id: `caulk.${colour}`,
    item: `paintable caulk, cartridge, for joints painted in the ${colour} colour`,
    use: 'joints of new work to wall and masonry',
    shop: 'hardware',
    need: litres,
    unit: 'l',
    packSize: cartridge,
    packs: cartridges + spare,
    spare: spare === 0 ? '' : '1 spare',
    priceEach: minorUnits(figures.number('price.caulk')),
    priceKnown: 'invented',
    firstUsedBy: 'D3.1',
  }
}

function tape(
  { figures }: PlanContext,
  kind: { readonly id: string; readonly item: string; readonly metres: number },
): Purchase {
  const roll = figures.number('pack.tape')
  return {
    id: kind.id,
    item: kind.item,
    use: 'joints of new work to wall',
    shop: 'hardware',
    need: kind.metres,
    unit: 'm',
    packSize: roll,
    packs: Math.ceil(kind.metres / roll),
    spare: 'a tenth for waste is in the need',
    priceEach: minorUnits(figures.number('price.tape')),
    priceKnown: 'invented',
    firstUsedBy: 'D2',
  }
}

function rodPurchase(
  { figures, show }: PlanContext,
  { diameter, metres }: Built['joints']['rods'][number],
  number: number,
): Purchase {
  const bag = figures.number('pack.rod')
  return {
    id: `rod.${number}`,
    item: `backer rod, ${show.withUnit(diameter)}`,
    use: 'behind caulk in wide joints',
    shop: 'hardware',
    need: metres,
    unit: 'm',
    packSize: bag,
    packs: Math.ceil(metres / bag),
    spare: '',
    priceEach: minorUnits(Math.round(figures.number('price.rod') * bag)),
    priceKnown: 'invented',
    firstUsedBy: 'D3.1',
  }
}
