import type { Environment } from './keys/read-keys.ts'

/** Which signs and colours a terminal can show. */
export interface Look {
  readonly signs: 'unicode' | 'ascii'
  readonly colour: boolean
}

/** ASCII where the locale is not UTF-8 or the terminal is a plain console; no colour with NO_COLOR set or TERM=dumb. */
export function lookOf(env: Environment): Look {
  const locale = env.LC_ALL || env.LC_CTYPE || env.LANG || ''
  const plain = env.TERM === 'linux' || env.TERM === 'dumb'
  return {
    signs: /utf-?8/i.test(locale) && !plain ? 'unicode' : 'ascii',
    colour: !env.NO_COLOR && env.TERM !== 'dumb',
  }
}

const IN_ASCII: readonly (readonly [RegExp, string])[] = [
  [/▌/g, '>'],
  [/·/g, '|'],
  [/→/g, '->'],
  [/×/g, 'x'],
  [/÷/g, '/'],
  [/µ/g, 'u'],
  [/°/g, ' deg'],
  [/↑ ↓/g, 'up down'],
  [/[‘’]/g, "'"],
  [/[“”]/g, '"'],
  [/…/g, '...'],
  [/[–−]/g, '-'],
  [/²/g, '^2'],
  [/³/g, '^3'],
  [/⁴/g, '^4'],
  [/≤/g, '<='],
  [/≥/g, '>='],
  [/Σ/g, 'sum of'],
  [/[⌈⌉⌊⌋]/g, ''],
]

/** A text in the signs the terminal has. */
export const inSigns = (text: string, look: Look): string =>
  look.signs === 'unicode' ? text : IN_ASCII.reduce((now, [sign, plain]) => now.replace(sign, plain), text)
