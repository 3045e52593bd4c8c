/** Base of every failure of the program that is planned for: never about carpentry, always with words and a way on. */
export abstract class NicheworkError extends Error {
  abstract override readonly name: string
}

/** Thrown when a file cannot be used as a job, packet or answers file: each fault with its place inside the file. */
export class InputUnreadable extends NicheworkError {
  override readonly name = 'InputUnreadable'
  constructor(
    readonly file: string,
    readonly faults: readonly string[],
    options?: ErrorOptions,
  ) {
    super(`${file}: ${faults.join('\n')}`, options)
  }
}

/** Thrown when a job was written by a newer nichework; the file stays untouched. */
export class JobTooNew extends NicheworkError {
  override readonly name = 'JobTooNew'
  constructor(
    readonly file: string,
    readonly found: unknown,
    readonly known: number,
  ) {
    super(`${file} was made by a newer nichework (schema ${String(found)}; this one reads up to ${known}).`)
  }
}

/** Thrown when a file or folder cannot be written or flushed; what was there before is untouched. */
export class DiskProblem extends NicheworkError {
  override readonly name = 'DiskProblem'
  constructor(
    readonly path: string,
    readonly doing: string,
    options?: ErrorOptions,
  ) {
    super(`Could not ${doing} ${path}${options?.cause instanceof Error ? `: ${options.cause.message}` : ''}.`, options)
  }
}

/** Thrown when a template names something its document does not offer. */
export class TemplateBroken extends NicheworkError {
  override readonly name = 'TemplateBroken'
  constructor(
    readonly file: string,
    readonly line: number,
    readonly problem: string,
  ) {
    super(`${file}, line ${line}: ${problem}`)
  }
}

/** Thrown when a command is used in a way it does not know. */
export class WrongUse extends NicheworkError {
  override readonly name = 'WrongUse'
}

/** Thrown when the interview is started without a terminal. */
export class NoTerminal extends NicheworkError {
  override readonly name = 'NoTerminal'
}
