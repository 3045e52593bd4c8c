/** Where the program runs: what it is told and where it speaks. Tests give their own. */
export interface Surroundings {
  readonly env: Readonly<Record<string, string | undefined>>
  readonly stdin: NodeJS.ReadStream
  readonly stdout: NodeJS.WriteStream
  /** Data asked for; nothing else goes to standard output. */
  readonly print: (text: string) => void
  /** Messages and progress: standard error. */
  readonly say: (text: string) => void
}

export const realSurroundings = (): Surroundings => ({
  env: process.env,
  stdin: process.stdin,
  stdout: process.stdout,
  print: (text) => {
    process.stdout.write(`${text}\n`)
  },
  say: (text) => {
    process.stderr.write(`${text}\n`)
  },
})
