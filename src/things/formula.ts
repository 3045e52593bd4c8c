/** One call of a formula as the recorder notes it. */
export interface Working {
  readonly id: string
  readonly plain: string
  readonly source: string
  readonly inputs: Readonly<Record<string, unknown>>
  readonly result: unknown
}

export interface FormulaNote {
  /** `slot.run-width` */
  readonly id: string
  /** The formula in plain notation: `slot − left fit − right fit, down to the cut step`. */
  readonly plain: string
  /** Citation, or `geometry`, or `common practice, no source`. */
  readonly source: string
}

/** The only mutable variable of the pure layers: set and cleared inside `recording`, synchronous. */
let recorder: ((working: Working) => void) | undefined

/**
 * Declares a formula: called like the bare function, with one object of named inputs.
 * Without a recorder it only calls `fn`; with one (see `recording`) each call is noted with its inputs and result.
 */
export function formula<I extends object, O>(note: FormulaNote, fn: (inputs: I) => O): (inputs: I) => O {
  return (inputs) => {
    const result = fn(inputs)
    recorder?.({ ...note, inputs: inputs as Readonly<Record<string, unknown>>, result })
    return result
  }
}

/** Runs `work` and returns its result with every formula called on the way, in order. Does not nest. */
export function recording<T>(work: () => T): { readonly result: T; readonly workings: readonly Working[] } {
  const workings: Working[] = []
  recorder = (working) => workings.push(working)
  try {
    return { result: work(), workings }
  } finally {
    recorder = undefined
  }
}
