/** Which process this is, and whether another one still runs: for the lock of a job. */
export interface Machine {
  readonly pid: number
  readonly host: string
  /** Changes at each start of the computer, so that a number used again is not taken for the same process. */
  readonly boot: string
  readonly runs: (pid: number) => boolean
}
