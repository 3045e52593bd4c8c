import { readFileSync } from 'node:fs'
import { hostname, uptime } from 'node:os'
import type { Machine } from '../machine.ts'

/** This process. */
export const nodeMachine = (): Machine => ({ pid: process.pid, host: hostname(), boot: bootId(), runs })

/** Linux names each start of the computer; elsewhere the time of the start, to the minute, stands for it. */
function bootId(): string {
  try {
    return readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim()
  } catch {
    return String(Math.round((Date.now() / 1000 - uptime()) / 60))
  }
}

function runs(pid: number): boolean {
  try {
    // Signal 0 asks whether the process is there and sends nothing.
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
}
