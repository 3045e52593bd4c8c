/** What a traced number counts: decides how it is written. */
export type Quantity =
  | 'length'
  | 'area'
  | 'volume'
  | 'litres'
  | 'mass'
  | 'force'
  | 'pressure'
  | 'money'
  | 'hours'
  | 'days'
  | 'percent'
  | 'count'
  | 'number'

/** Names a formula, a question or a row of `shared/figures`: a formula and a field are such names themselves. */
export interface Ref {
  readonly id: string
}

export interface FormulaNote<I = Readonly<Record<string, unknown>>> {
  /** `slot.run-width` */
  readonly id: string
  /** The formula in plain notation: `slot − left fit − right fit, down to the cut step`. */
  readonly plain: string
  /** Citation, or `geometry`, or `common practice, no source`. */
  readonly source: string
  /** What the result counts; a length when nothing is said. */
  readonly gives?: Quantity
  /**
   * Where an input comes from, when its name does not say so: `{ panel: carcassThickness, height: { id: 'box.height' } }`.
   * An input named like the last part of a formula's, question's or figure's id (`insideWidth`: `box.inside-width`) finds it itself.
   */
  readonly from?: { readonly [K in keyof I]?: Ref | readonly Ref[] }
  /** The inputs as they are told, when the formula itself takes something larger: two readings of a whole line. */
  readonly told?: (inputs: I) => Readonly<Record<string, unknown>>
  /** What an input counts, when it has no origin and is not a length. */
  readonly units?: { readonly [K in keyof I]?: Quantity }
}

/** One number as it was come by: a formula called, an answer or a suggestion read, a figure read. */
export interface Working {
  readonly kind: 'formula' | 'question' | 'figure'
  readonly id: string
  /** What was being worked out: `a/box-2`, `a`, or empty for the whole job. */
  readonly about: string
  readonly plain: string
  readonly source: string
  readonly gives?: Quantity
  readonly from: Readonly<Record<string, Ref | readonly Ref[] | undefined>>
  readonly units: Readonly<Record<string, Quantity | undefined>>
  readonly inputs: Readonly<Record<string, unknown>>
  readonly result: unknown
}

/** A formula: called like the bare function, and the name under which its result is found again. */
export type Formula<I, O> = ((inputs: I) => O) & Ref

/** The only mutable variables of the pure layers: set and put back inside `recording` and `within`, synchronous. */
let recorder: ((working: Working) => void) | undefined
let subject = ''

/**
 * Declares a formula: called like the bare function, with one object of named inputs.
 * Without a recorder it only calls `fn`; with one (see `recording`) each call is noted with its inputs and result.
 */
export function formula<I extends object, O>(note: FormulaNote<I>, fn: (inputs: I) => O): Formula<I, O> {
  const call = (inputs: I): O => {
    const result = fn(inputs)
    if (recorder !== undefined)
      recorder({ ...asNoted(note), inputs: Object.fromEntries(Object.entries(note.told?.(inputs) ?? inputs)), result })
    return result
  }
  return Object.assign(call, { id: note.id })
}

const asNoted = <I>({ from, units, told: _told, ...note }: FormulaNote<I>) => ({
  ...note,
  kind: 'formula' as const,
  about: subject,
  from: { ...from } as Working['from'],
  units: { ...units } as Working['units'],
})

type Read = Pick<Working, 'kind' | 'id' | 'about' | 'plain' | 'source' | 'result'> &
  Partial<Pick<Working, 'from' | 'inputs'>>

/** Notes a value read from a question or a figure, while anybody is recording. */
export function noteRead(read: () => Read): void {
  recorder?.({ from: {}, inputs: {}, units: {}, ...read() })
}

/** Everything worked out inside is about this thing: `within('a/box-2', () => …)`. Costs nothing when nobody records. */
export function within<T>(about: string, work: () => T): T {
  const outer = subject
  subject = about
  try {
    return work()
  } finally {
    subject = outer
  }
}

/** Runs `work` and returns its result with every number come by on the way, in order. Does not nest. */
export function recording<T>(work: () => T): { readonly result: T; readonly workings: readonly Working[] } {
  const workings: Working[] = []
  recorder = (working) => workings.push(working)
  try {
    return { result: work(), workings }
  } finally {
    recorder = undefined
  }
}

/** Runs `work` without noting anything: a plan made only to be compared with. */
export function unrecorded<T>(work: () => T): T {
  const outer = recorder
  recorder = undefined
  try {
    return work()
  } finally {
    recorder = outer
  }
}
