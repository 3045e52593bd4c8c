import { fieldById } from '../../job/fields.ts'
import { subjectOf } from './origin-index.ts'
import { questionInWords } from './trace-parts.ts'
import { traceNodes } from './trace-tree.ts'
import type { Traceable } from './traceable.ts'
import type { Tracing } from './tracing.ts'

/** What the plan used for each question, by its key: `a.widths`, `job.boxHeight`. */
export const questionTraces = (on: Tracing): readonly Traceable[] =>
  [...on.plan.used.values()].map(({ key, value }) => {
    const [place = '', id = ''] = key.split('.')
    const field = fieldById(id)
    return {
      names: [key, ...(place === 'job' ? [id] : [])],
      trace: () => ({
        title: questionInWords(on.plan.bays, key),
        says: field === undefined ? [] : [field.why],
        nodes: traceNodes(on, [{ name: field?.short ?? id, value, about: place, from: { id } }]),
      }),
    }
  })

/** Every formula by its id, and everything worked out about one thing by its id or its mark: `a/box-2`, `box L2`. */
export function workingTraces(on: Tracing): readonly Traceable[] {
  const formulas = on.index.noted.map(({ working }) => working).filter((w) => w.kind === 'formula')
  const ids = [...new Set(formulas.map((w) => w.id))]
  const subjects = [...new Set(formulas.map((w) => subjectOf(w.about)))].filter((about) => about !== '')
  const tracesOf = (of: (working: (typeof formulas)[number]) => boolean) => () => {
    const found = formulas.filter(of)
    return traceNodes(
      on,
      found
        .filter((w, i) => found.findIndex((x) => x.id === w.id && x.about === w.about && x.result === w.result) === i)
        .map((w) => ({
          name: on.subject(w.about) === '' ? lastOf(w.id) : `${lastOf(w.id)}, ${on.subject(w.about)}`,
          value: w.result,
          about: w.about,
          from: { id: w.id },
        })),
    )
  }
  return [
    ...ids.map((id) => {
      const nodes = tracesOf((w) => w.id === id)
      return { names: [id], trace: () => ({ title: id, says: [], nodes: nodes() }) }
    }),
    ...subjects.map((about) => {
      const nodes = tracesOf((w) => subjectOf(w.about) === about)
      const name = on.subject(about)
      return {
        names: [about, name, ...(name.startsWith('box ') ? [name.slice(4)] : [])],
        trace: () => ({ title: name, says: [], nodes: nodes() }),
      }
    }),
  ]
}

const lastOf = (id: string): string => id.slice(id.lastIndexOf('.') + 1).replaceAll('-', ' ')
