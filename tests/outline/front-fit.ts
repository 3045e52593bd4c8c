import type { Plan } from '../../src/plan/plan.ts'

/** What of the leaves of a bay does not hang: past its box, over another leaf, or off what its parts are cut to. */
export function leafFaults(plan: Plan, bay: string): readonly string[] {
  const leaves = plan.fronts.leaves.filter((l) => l.box.run.bay.id === bay)
  return leaves.flatMap((leaf, i) => {
    const { box } = leaf
    const [right, top] = [leaf.x + leaf.width, leaf.z + leaf.height]
    const past = leaf.x < box.x || right > box.x + box.width || leaf.z < box.run.z0 || top > box.run.z0 + box.height
    const over = leaves.slice(i + 1).filter((o) => {
      const across = leaf.x < o.x + o.width && o.x < right
      return across && leaf.z < o.z + o.height && o.z < top
    })
    const cups = leaf.cups.filter((c, at) => c <= 0 || c >= leaf.height || c <= (leaf.cups[at - 1] ?? 0))
    return [
      ...(past ? [`${leaf.id} hangs past its box`] : []),
      ...over.map((o) => `${leaf.id} hangs over ${o.id}`),
      ...cups.map((c) => `${leaf.id} has a cup at ${c}`),
    ]
  })
}
