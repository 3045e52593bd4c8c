import { type Length, less } from '../../units/length.ts'

export interface Section {
  readonly from: Length
  readonly to: Length
}

/**
 * A long piece from `from` to `to` in as few lengths as a sheet of `most` gives, jointed at box joints only.
 * Where two joints stand further apart than `most`, the section stays too long and the panel layout says so.
 */
export function sectionsAt(run: Section, joints: readonly Length[], most: Length): readonly Section[] {
  if (less(run.to, run.from) <= most) return [run]
  const inside = joints.filter((x) => x > run.from && x < run.to)
  const reachable = inside.filter((x) => less(x, run.from) <= most)
  const cut = reachable.at(-1) ?? inside[0]
  if (cut === undefined) return [run]
  return [{ from: run.from, to: cut }, ...sectionsAt({ from: cut, to: run.to }, joints, most)]
}
