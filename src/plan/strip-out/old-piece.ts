import { type RemovalRow, removals } from '../../job/chapters/removal.ts'
import { OLD_FIXINGS, REMOVALS } from '../../kinds/removal/list.ts'
import { within } from '../../things/formula.ts'
import type { NamedBay } from '../../things/place.ts'
import type { Area } from '../../units/area.ts'
import type { Mass } from '../../units/mass.ts'
import { litres, type Volume } from '../../units/volume.ts'
import type { PlanContext } from '../context.ts'
import { coatedSurface, patchedArea, removalAmount, removalEffort, removedMass, solidVolume } from './removal-sums.ts'

/** One row of what comes off, worked out. Masses are of one piece; effort, volume and areas of all its pieces. */
export interface OldPiece {
  /** `a/old-1` */
  readonly id: string
  readonly bay: NamedBay
  readonly row: RemovalRow
  readonly quantity: number
  /** In units of its kind's hour rate. */
  readonly effort: number
  readonly mass: Mass
  readonly volume: Volume
  /** Painted or papered surface that goes with it; 0 when it is bare. */
  readonly coated: Area
  readonly patched: Area
  readonly help: 'none' | 'second person' | 'lift aid'
  /** `left alcove, cabinet: 40 long, 34 high, 20 deep, screwed, 35 lb` */
  readonly says: string
}

/** Everything named in the survey as coming off a bay; nothing where nobody named anything. */
export function oldPieces(context: PlanContext, bay: NamedBay): readonly OldPiece[] {
  const rows = context.settle.measured(removals, bay, () => ({ value: [], because: 'nothing was named to come off' }))
  return rows.value.map((row, i) => {
    const id = `${bay.id}/old-${i + 1}`
    return within(id, () => oldPiece(context, bay, row, id))
  })
}

function oldPiece({ figures, show }: PlanContext, bay: NamedBay, row: RemovalRow, id: string): OldPiece {
  const kind = REMOVALS[row.what]
  const fixing = OLD_FIXINGS[row.fixing]
  const { length, height, depth } = row
  const quantity = row.count ?? 1
  const amount = removalAmount({ length, height, unit: kind.unit })
  const solid = solidVolume({ length, height, depth, solidShare: figures.number(kind.solid) })
  const mass = removedMass({ solidVolume: solid, density: figures.number(kind.density) })
  const size = `${show.length(length)} long, ${show.length(height)} high, ${show.length(depth)} deep`
  const many = quantity === 1 ? '' : `, ${quantity} of them`
  return {
    id,
    bay,
    row,
    quantity,
    effort: removalEffort({
      amount,
      harder: figures.number(fixing.harder),
      quantity,
    }),
    mass,
    volume: litres(solid * quantity),
    coated: coatedSurface({
      length,
      height,
      depth,
      sides: row.coat === 'bare' ? 0 : kind.coatedSides,
      quantity,
    }),
    patched: patchedArea({ length, height, patchedShare: figures.number(fixing.patched), quantity }),
    help: helpFor(mass, figures.number('lift.alone'), figures.number('lift.two')),
    says: `${bay.name}, old ${kind.says}: ${size}, ${fixing.says}, ${show.mass(mass)} each${many}.`,
  }
}

const helpFor = (mass: Mass, alone: number, two: number): OldPiece['help'] =>
  mass > two ? 'lift aid' : mass > alone ? 'second person' : 'none'
