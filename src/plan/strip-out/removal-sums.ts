import type { RemovalUnit } from '../../kinds/removal/contract.ts'
import { formula } from '../../things/formula.ts'
import { type Area, areaOf, squareMetres } from '../../units/area.ts'
import { inMetres, type Length } from '../../units/length.ts'
import { kilograms, type Mass } from '../../units/mass.ts'
import { litres, type Volume } from '../../units/volume.ts'

const PRACTICE = 'common practice, no source'

/** What the work of taking one old thing off is counted by: 1, metres or square metres. */
export const removalAmount = formula<{ length: Length; height: Length; unit: RemovalUnit }, number>(
  {
    id: 'removal.amount',
    plain: 'a piece: 1; trim: its length in metres; panels, tiles, floors, paper: length × height in m²',
    source: PRACTICE,
    gives: 'number',
  },
  ({ length, height, unit }) => {
    if (unit === 'piece') return 1
    return unit === 'metre' ? inMetres(length) : areaOf(length, height)
  },
)

/** Work of one row in units of its hour rate: how much × how much harder it is held × how many. */
export const removalEffort = formula<{ amount: number; harder: number; quantity: number }, number>(
  {
    id: 'removal.effort',
    plain: 'amount × factor of its fixing × how many',
    source: PRACTICE,
    gives: 'number',
    units: { amount: 'number', harder: 'number', quantity: 'count' },
  },
  ({ amount, harder, quantity }) => amount * harder * quantity,
)

/** Solid volume of one old thing, litres: its outside × the share that is solid. */
export const solidVolume = formula<{ length: Length; height: Length; depth: Length; solidShare: number }, Volume>(
  {
    id: 'removal.solid-volume',
    plain: 'length × height × depth × solid share',
    source: 'geometry; the share is common practice, no source',
    gives: 'volume',
    units: { solidShare: 'number' },
  },
  ({ length, height, depth, solidShare }) =>
    litres(inMetres(length) * inMetres(height) * inMetres(depth) * solidShare * LITRES_PER_CUBIC_METRE),
)

const LITRES_PER_CUBIC_METRE = 1000

/** Mass of one old thing, kg: solid volume (litres) × density (kg/m³). */
export const removedMass = formula<{ solidVolume: Volume; density: number }, Mass>(
  {
    id: 'removal.mass',
    plain: 'solid volume × density',
    source: 'geometry; the density is common practice, no source',
    gives: 'mass',
    units: { density: 'number' },
  },
  ({ solidVolume: volume, density }) => kilograms((volume * density) / LITRES_PER_CUBIC_METRE),
)

/** Painted or papered surface that goes with a whole piece, m²: face, edges and ends (twice where the inside is painted too). */
export const coatedSurface = formula<
  { length: Length; height: Length; depth: Length; sides: number; quantity: number },
  Area
>(
  {
    id: 'removal.coated-surface',
    plain: '(length × height + 2 × depth × (length + height)) × painted sides × how many',
    source: '40 CFR 745.83: removing a painted component counts its whole area; geometry',
    gives: 'area',
    units: { sides: 'count', quantity: 'count' },
  },
  ({ length, height, depth, sides, quantity }) => {
    const [l, h, d] = [inMetres(length), inMetres(height), inMetres(depth)]
    return squareMetres((l * h + 2 * d * (l + h)) * sides * quantity)
  },
)

/** What is made good behind it, m²: length × height × the share its fixing spoils × how many. */
export const patchedArea = formula<{ length: Length; height: Length; patchedShare: number; quantity: number }, Area>(
  {
    id: 'removal.patched-area',
    plain: 'length × height × share spoiled by its fixing × how many',
    source: PRACTICE,
    gives: 'area',
    units: { patchedShare: 'number', quantity: 'count' },
  },
  ({ length, height, patchedShare, quantity }) => squareMetres(areaOf(length, height) * patchedShare * quantity),
)
