import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { openTerminal, PROGRAM } from '../terminal/harness.ts'

/** Milliseconds from the start of `node` to the first frame of the interview, in a terminal. */
export const interviewStart = (): Promise<number> =>
  timeToFrame(PROGRAM, (screen) => screen.split('\n').filter((line) => line.trim() !== '').length > 3)

/** The same for a bare Ink program. */
export const helloStart = (program: string): Promise<number> =>
  timeToFrame(program, (screen) => screen.includes('first frame'))

/** A bare Ink program, bundled as the interview is. */
export async function bundledHello(): Promise<string> {
  const outfile = join(mkdtempSync(join(tmpdir(), 'nichework-hello-')), 'hello.mjs')
  await build({
    entryPoints: [fileURLToPath(new URL('./hello.tsx', import.meta.url))],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    jsx: 'automatic',
    minifyWhitespace: true,
    minifySyntax: true,
    define: { 'process.env.NODE_ENV': '"production"' },
    alias: { 'react-devtools-core': fileURLToPath(new URL('./no-devtools.mjs', import.meta.url)) },
    banner: {
      js: "import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(import.meta.url);",
    },
    logLevel: 'error',
  })
  return outfile
}

async function timeToFrame(program: string, isFrame: (screen: string) => boolean): Promise<number> {
  const home = mkdtempSync(join(tmpdir(), 'nichework-bench-'))
  const start = performance.now()
  const terminal = openTerminal([program], { cwd: home, env: { NICHEWORK_HOME: home } })
  await terminal.until(isFrame, 30_000)
  const took = performance.now() - start
  terminal.kill()
  await terminal.exited
  return took
}
