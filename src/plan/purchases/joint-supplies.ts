import { within } from '../../things/formula.ts'
import type { Purchase } from '../../things/supplies.ts'
import type { Task } from '../../things/task.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'
import { priceKnown } from '../price-known.ts'
import { packPrice, packsFor, packsWithSpare } from './packs.ts'

/** Caulk by colour, masking tape, backer rod. */
export const jointPurchases = (context: PlanContext, built: Built, tasks: readonly Task[]): readonly Purchase[] => [
  ...(['built-in', 'wall'] as const).map((colour) => caulk(context, built, colour)),
  tape(context, { id: 'tape', item: 'masking tape, plain: the caulk seals its edge', metres: built.joints.tape }),
  ...(tasks.some((t) => t.id === 'D10')
    ? [
        tape(context, {
          id: 'tape.again',
          item: 'masking tape, plain, for the second taping',
          metres: built.joints.tape,
        }),
      ]
    : []),
  tape(context, {
    id: 'tape.sharp',
    item: 'sharp-line tape, where paint alone makes the line',
    metres: built.joints.sharpLineTape,
  }),
  ...built.joints.rods.map((rod, at) => rodPurchase(context, rod, at + 1)),
]

const caulk = (context: PlanContext, built: Built, colour: 'built-in' | 'wall'): Purchase =>
  within(`caulk.${colour}`, () => {
    const { figures } = context
    const packSize = figures.number('pack.caulk')
    const need = built.joints.caulk[colour]
    const cartridges = packsFor({ need, packSize, unit: 'l' })
    const packs = packsWithSpare({ packs: cartridges, noSpareUpTo: figures.number('pack.caulk-spare-over') })
    return {
      ...OF_JOINTS,
      id: `caulk.${colour}`,
      item: `paintable caulk, cartridge, for joints painted in the ${colour} colour`,
      use: 'joints of new work to wall and masonry',
      need,
      unit: 'l',
      packSize,
      packs,
      spare: packs > cartridges ? '1 spare' : '',
      priceEach: packPrice({ caulk: figures.number('price.caulk') }),
      priceKnown: priceKnown(figures, 'price.caulk'),
      firstUsedBy: 'D3.1',
    }
  })

const OF_JOINTS = { shop: 'hardware' } as const

const tape = (
  { figures }: PlanContext,
  kind: { readonly id: string; readonly item: string; readonly metres: number },
): Purchase =>
  within(kind.id, () => {
    const packSize = figures.number('pack.tape')
    return {
      ...OF_JOINTS,
      id: kind.id,
      item: kind.item,
      use: 'joints of new work to wall',
      need: kind.metres,
      unit: 'm',
      packSize,
      packs: packsFor({ need: kind.metres, packSize, unit: 'm' }),
      spare: 'a tenth for waste is in the need',
      priceEach: packPrice({ tape: figures.number('price.tape') }),
      priceKnown: priceKnown(figures, 'price.tape'),
      firstUsedBy: 'D2',
    }
  })

const rodPurchase = (
  { figures, show }: PlanContext,
  { diameter, metres }: Built['joints']['rods'][number],
  number: number,
): Purchase =>
  within(`rod.${number}`, () => {
    const packSize = figures.number('pack.rod')
    return {
      ...OF_JOINTS,
      id: `rod.${number}`,
      item: `backer rod, ${show.withUnit(diameter)}`,
      use: 'behind caulk in wide joints',
      need: metres,
      unit: 'm',
      packSize,
      packs: packsFor({ need: metres, packSize, unit: 'm' }),
      spare: '',
      priceEach: packPrice({ rod: figures.number('price.rod'), holds: packSize }),
      priceKnown: priceKnown(figures, 'price.rod'),
      firstUsedBy: 'D3.1',
    }
  })
