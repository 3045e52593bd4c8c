import { spawn } from 'node:child_process'
import { cleanEnvironment, PROGRAM } from './harness.ts'

export interface Ran {
  readonly code: number | null
  readonly stdout: string
  readonly stderr: string
}

/** Runs the built program without a terminal, and gives what it wrote. */
export function runProgram(
  words: readonly string[],
  options: {
    readonly input?: string | Uint8Array
    readonly env?: Readonly<Record<string, string>>
    readonly cwd?: string
  } = {},
): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [PROGRAM, ...words], { cwd: options.cwd, env: cleanEnvironment(options.env) })
    let stdout = ''
    let stderr = ''
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      stdout += text
    })
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      stderr += text
    })
    child.on('error', reject)
    child.on('close', (code) => resolve({ code, stdout, stderr }))
    child.stdin.on('error', () => undefined)
    child.stdin.end(options.input ?? '')
  })
}
