import type { HelperJoint } from '../audience-fields.ts'

/** One printed row: a joint, or the two over and under one edge that are alike in all that is done to them. */
export interface JointRow {
  /** `9` or `9, 10`. */
  readonly numbers: string
  readonly where: string
  readonly joint: HelperJoint
}

const OVER = /, over$/
const UNDER = /, under$/

/** The rows of a bay in the order of their numbers. */
export function jointRows([joint, next, ...others]: readonly HelperJoint[]): readonly JointRow[] {
  if (joint === undefined) return []
  if (next !== undefined && alike(joint, next)) {
    const where = joint.where.replace(OVER, ', over/under')
    return [{ numbers: `${joint.number}, ${next.number}`, where, joint }, ...jointRows(others)]
  }
  const own = { numbers: String(joint.number), where: joint.where, joint }
  return [own, ...jointRows(next === undefined ? [] : [next, ...others])]
}

function alike(over: HelperJoint, under: HelperJoint): boolean {
  if (!OVER.test(over.where) || !UNDER.test(under.where)) return false
  return doneTo(over) === doneTo(under)
}

/** Everything of a joint but which it is. */
function doneTo({ id: _id, number: _number, where, ...rest }: HelperJoint): string {
  return JSON.stringify([where.replace(OVER, '').replace(UNDER, ''), rest])
}
