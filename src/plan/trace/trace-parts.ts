import { fieldById } from '../../job/fields.ts'
import { onHold, type Part } from '../../things/part.ts'
import type { Trace } from './trace-node.ts'
import { traceNodes, type Wanted } from './trace-tree.ts'
import type { Traceable } from './traceable.ts'
import type { Tracing } from './tracing.ts'

/** Each part by its mark, its mark and piece, and its id. */
export const partTraces = (on: Tracing): readonly Traceable[] =>
  on.plan.parts.map((part) => ({
    names: [part.mark, `${part.mark} ${part.piece ?? part.name}`, part.id],
    trace: () => partTrace(on, part),
  }))

function partTrace(on: Tracing, part: Part): Trace {
  return {
    title: `${part.mark} ${part.piece === undefined ? part.name : `${part.piece} (${part.name})`}, ${part.goesTo}`,
    says: partSays(on, part),
    nodes: traceNodes(on, [...sizesWanted(part), ...massWanted(on, part)]),
  }
}

/** The sizes of a part as they are printed; a rough size only where it differs. */
export function sizesWanted(part: Part): readonly Wanted[] {
  const { id: about, from } = part
  return [
    { name: 'length', value: part.length, about, from: from?.length },
    { name: 'width', value: part.width, about, from: from?.width },
    { name: 'thickness', value: part.thickness, about, from: from?.thickness },
    ...(part.roughLength === part.length
      ? []
      : [{ name: 'roughLength', value: part.roughLength, about, from: from?.roughLength }]),
    ...(part.roughWidth === part.width
      ? []
      : [{ name: 'roughWidth', value: part.roughWidth, about, from: from?.roughWidth }]),
  ]
}

function massWanted({ plan }: Tracing, { id }: Part): readonly Wanted[] {
  const mass = plan.fixings.masses.get(id)
  return mass === undefined ? [] : [{ name: 'mass', value: mass, about: id, as: 'mass' }]
}

function partSays({ show, plan }: Tracing, part: Part): readonly string[] {
  const { placement: at, quantity, waitsFor } = part
  const many = quantity === 1 ? '' : `${quantity} of them; the first `
  const waits = waitsFor.map((key) => questionInWords(plan.bays, key)).join(', ')
  return [
    `${many}stands ${show.withUnit(at.x)} from the left end of the wall, ${show.withUnit(at.y)} out of the back wall, ${show.withUnit(at.z)} above the highest floor point.`,
    ...(onHold(part) ? [`HOLD: these sizes are assumed. It waits for: ${waits}.`] : []),
  ]
}

/** `left alcove, studs`. */
export function questionInWords(bays: Tracing['plan']['bays'], key: string): string {
  const [place = '', id = ''] = key.split('.')
  const bay = bays.find((b) => b.id === place)
  const short = fieldById(id)?.short ?? id
  return bay === undefined ? short : `${bay.name}, ${short}`
}
