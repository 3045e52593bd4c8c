import * as z from 'zod'
import codes from '../../shared/codes.json' with { type: 'json' }
import { checkedFile } from './checked-file.ts'
import type { FigureRow } from './figure.ts'

/** What each value of a profile means, and which side of it is the safe one. */
const VALUES = {
  least: { says: 'no wood nearer to the opening than this', safe: 'more' },
  within: { says: 'distance within which projection is limited', safe: 'more' },
  'out-per-distance': { says: 'projection allowed for each unit of distance', safe: 'less' },
  shallow: { says: 'projection up to which the lesser distance is enough', safe: 'less' },
  'deep-least': { says: 'no wood standing out further nearer to the opening than this', safe: 'more' },
  gap: { says: 'wood off the sides of a masonry fireplace or chimney', safe: 'more' },
  'from-firebox': { says: 'or this far from the inside of the firebox lining', safe: 'more' },
  'from-flue': { says: 'or this far from the inside of the flue lining', safe: 'more' },
  'from-opening': { says: 'built-in furniture beside the opening', safe: 'more' },
  front: { says: 'hearth in front of the opening', safe: 'more' },
  side: { says: 'hearth at each side of the opening', safe: 'more' },
  'large-from': { says: 'opening area from which the hearth is larger', safe: 'less' },
  'front-small': { says: 'hearth in front of a small opening', safe: 'more' },
  'side-small': { says: 'hearth at each side of a small opening', safe: 'more' },
  'front-large': { says: 'hearth in front of a large opening', safe: 'more' },
  'side-large': { says: 'hearth at each side of a large opening', safe: 'more' },
  'front-open': { says: 'hearth in front of an open fire', safe: 'more' },
  'front-closed': { says: 'hearth in front of a closed appliance', safe: 'more' },
} as const satisfies Readonly<Record<string, { readonly says: string; readonly safe: 'more' | 'less' }>>
type ValueId = keyof typeof VALUES
const isValue = (id: string): id is ValueId => Object.hasOwn(VALUES, id)

const sourced = {
  says: z.string().min(3),
  source: z.string().min(3),
  edition: z.string().optional(),
  section: z.string().optional(),
  known: z.enum(['read', 'memory', 'practice']),
  /** Lengths as they are printed (`6 in`); plain numbers for a ratio, and for an area in square inches. */
  values: z.record(
    z.string().refine(isValue, { error: `is none of ${Object.keys(VALUES).join(', ')}` }),
    z.union([z.string(), z.number().positive()]),
  ),
}

const profile = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  name: z.string().min(3),
  says: z.string().min(3),
  region: z.string().min(3),
  /** The row with the same code's printed metric figures: a metric job meets both. */
  metricJobs: z.string().optional(),
  /** What a person is asked to look up or confirm before relying on this row. */
  asks: z.string().optional(),
  opening: z.strictObject({ rule: z.enum(['rising', 'stepped', 'keep off', 'never over it']), ...sourced }),
  faces: z.strictObject({ rule: z.literal('gap or lining'), ...sourced }),
  hearth: z.strictObject({ rule: z.enum(['by opening', 'by flame', 'fixed']), ...sourced }),
})
/** One code or handbook as a row: what it asks over and beside the opening, at the breast's sides, and of the hearth. */
export type CodeProfile = z.infer<typeof profile>
/** The three things a code speaks of. */
export type CodePart = 'opening' | 'faces' | 'hearth'

const table = z
  .strictObject({ about: z.string(), profiles: z.array(profile).min(1) })
  .superRefine(({ profiles }, context) => {
    const ids = profiles.map(({ id }) => id)
    profiles.forEach(({ id, metricJobs }, at) => {
      const fault =
        ids.indexOf(id) !== at
          ? `"${id}" stands twice.`
          : metricJobs === undefined || ids.includes(metricJobs)
            ? undefined
            : `"${metricJobs}" is none of ${ids.join(', ')}.`
      if (fault !== undefined) context.addIssue({ code: 'custom', path: ['profiles', at], message: fault })
    })
  })

let read: readonly CodeProfile[] | undefined

/** The profiles of `shared/codes.json`, checked once a process. Throws with file, row and field. */
export function codeProfiles(): readonly CodeProfile[] {
  read ??= checkedFile('shared/codes.json', table, codes).profiles
  return read
}

/** Name of one value among the figures: `code.irc.opening.least`. */
export const codeFigure = (profileId: string, part: CodePart, value: string): string =>
  `code.${profileId}.${part}.${value}`

/** Every value of every profile as a figure of its own, with its source: it can be looked up, and changed to the safe side. */
export const codeRows = (): readonly FigureRow[] =>
  codeProfiles().flatMap((row) => [...rowsOf(row, 'opening'), ...rowsOf(row, 'faces'), ...rowsOf(row, 'hearth')])

function rowsOf(row: CodeProfile, part: CodePart): readonly FigureRow[] {
  const { source, edition, section, known, values } = row[part]
  return Object.entries(values).flatMap(([id, value]): readonly FigureRow[] => {
    if (!isValue(id)) return []
    const own = {
      id: codeFigure(row.id, part, id),
      says: `${row.name}: ${VALUES[id].says}`,
      source,
      ...(edition === undefined ? {} : { edition }),
      ...(section === undefined ? {} : { section }),
      region: row.region,
      known,
      change: 'safe-side' as const,
      safe: VALUES[id].safe,
    }
    return [
      typeof value === 'number'
        ? { ...own, value, unit: id === 'large-from' ? 'sqin' : '1' }
        : { ...own, length: value },
    ]
  })
}
