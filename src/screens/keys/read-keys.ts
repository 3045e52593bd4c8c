import { decodeKeys } from './decode-keys.ts'
import type { Key } from './key.ts'

/** How long a lone Esc is waited on: another byte would make it an arrow. Longer over a line or in a multiplexer. */
const ESCAPE_MS = 30
const SLOW_ESCAPE_MS = 100

export interface KeyInput {
  readonly setRawMode?: (on: boolean) => unknown
  readonly setEncoding: (encoding: 'utf8') => unknown
  readonly on: (event: 'data', heard: (chunk: string) => void) => unknown
  readonly off: (event: 'data', heard: (chunk: string) => void) => unknown
  readonly resume: () => unknown
  readonly pause: () => unknown
}

/** Listens to the terminal's bytes and gives the keys in order; call what it returns to stop listening. */
export function readKeys(stdin: KeyInput, env: Environment, heard: (keys: readonly Key[]) => void): () => void {
  const wait = env.SSH_CONNECTION || env.TMUX || env.STY ? SLOW_ESCAPE_MS : ESCAPE_MS
  let rest = ''
  let timer: ReturnType<typeof setTimeout> | undefined
  const take = (flush: 'more may come' | 'that is all') => {
    const decoded = decodeKeys(rest, flush)
    rest = decoded.rest
    if (decoded.keys.length > 0) heard(decoded.keys)
  }
  const onData = (chunk: string) => {
    clearTimeout(timer)
    rest += chunk
    take('more may come')
    // A paste may take its time; everything else that is cut off is settled by the timer.
    if (rest !== '' && !rest.startsWith('\u001B[200~')) timer = setTimeout(() => take('that is all'), wait)
  }
  stdin.setEncoding('utf8')
  stdin.setRawMode?.(true)
  stdin.on('data', onData)
  stdin.resume()
  return () => {
    clearTimeout(timer)
    stdin.off('data', onData)
    stdin.setRawMode?.(false)
    stdin.pause()
  }
}

export type Environment = Readonly<Record<string, string | undefined>>
