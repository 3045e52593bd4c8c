import { expect, it } from 'vitest'
import { runProgram } from './run-program.ts'

it('check says of a confirm that it has its yes, and on which day', async () => {
  const { code, stdout } = await runProgram(['check', 'demo/alcoves-inch/job.json'])
  expect(code).toBe(0)
  expect(stdout).toMatch(/^confirmed 2026-11-20 · breast/m)
  expect(stdout).not.toMatch(/^confirm ·/m)
})
