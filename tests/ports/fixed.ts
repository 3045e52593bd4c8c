import type { StorePorts } from '../../src/archive/store-ports.ts'
import type { Files } from '../../src/ports/files.ts'
import { day } from '../../src/units/day.ts'

/** Ports of a store that give the same values in each run. */
export function fixedPorts(
  files: Files,
  options: { readonly pid?: number; readonly minute?: () => string } = {},
): StorePorts {
  const pid = options.pid ?? 100
  let count = 0
  return {
    files,
    clock: { today: () => day('2026-11-25'), minute: options.minute ?? (() => '2026-11-25T20:41Z') },
    randomId: (letters) => `${pid}${(count++).toString(36)}`.padStart(letters, '0').slice(-letters),
    machine: { pid, host: 'bench', boot: 'boot-1', runs: (other) => other < 1000 },
  }
}
