import { formula } from '../../things/formula.ts'
import { inMetres, type Length, sum, times } from '../../units/length.ts'

/** Tape on one joint: its length and the overlap at both ends. */
export const jointTape = formula(
  {
    id: 'joints.tape',
    plain: 'length of the joint + 2 × overlap',
    source: 'common practice, no source',
    from: { overlap: { id: 'tape.overlap' } },
  },
  ({ length, overlap }: { readonly length: Length; readonly overlap: Length }): Length =>
    sum(length, times(overlap, 2)),
)

/** Metres of tape to have: all joints together × (1 + waste). */
export const tapeInAll = formula(
  {
    id: 'joints.tape-in-all',
    plain: 'tape of all joints × (1 + waste), in metres',
    source: 'common practice, no source',
    gives: 'number',
    from: { tapes: jointTape, waste: { id: 'tape.waste' } },
  },
  ({ tapes, waste }: { readonly tapes: readonly Length[]; readonly waste: number }): number =>
    tapes.reduce((metres, tape) => metres + inMetres(tape), 0) * (1 + waste),
)

/** Litres of caulk of one colour: the joints of that colour together. */
export const caulkInAll = formula(
  { id: 'joints.caulk-in-all', plain: 'caulk of every joint of one colour', source: 'geometry', gives: 'litres' },
  ({ litres }: { readonly litres: readonly number[] }): number => litres.reduce((all, joint) => all + joint, 0),
)

/** Metres of backer rod of one diameter: the joints that take it together. */
export const rodInAll = formula(
  {
    id: 'joints.rod-in-all',
    plain: 'length of every joint over this rod, in metres',
    source: 'geometry',
    gives: 'number',
  },
  ({ lengths }: { readonly lengths: readonly Length[] }): number =>
    lengths.reduce((metres, length) => metres + inMetres(length), 0),
)
