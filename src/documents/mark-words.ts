import { ROLES, type Role } from '../things/part.ts'

/** Role letter of a mark: `L2-S1` → S. */
export function roleOfMark(mark: string): Role | undefined {
  const letter = /-([A-Z])/.exec(mark)?.[1]
  return letter !== undefined && letter in ROLES ? (letter as Role) : undefined
}

/** The key: each role letter used by these marks, with the word said for it. */
export const rolesUsed = (marks: readonly string[]): readonly { readonly letter: Role; readonly says: string }[] => {
  const used = new Set(marks.map(roleOfMark))
  return (Object.keys(ROLES) as Role[]).filter((r) => used.has(r)).map((letter) => ({ letter, says: ROLES[letter] }))
}
