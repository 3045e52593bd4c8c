import type { Key, KeyName } from './key.ts'

export interface Decoded {
  readonly keys: readonly Key[]
  /** The beginning of a sequence that has not come to its end yet. */
  readonly rest: string
}

/**
 * Reads a terminal's bytes as keys, one event a key, a paste as one. Any cutting of the bytes gives the same keys; `flush`
 * (the escape timer ran out) takes a lone Esc for the key. Replies, mouse and unknown sequences are passed over.
 */
export function decodeKeys(buffer: string, flush: 'more may come' | 'that is all'): Decoded {
  const keys: Key[] = []
  let at = 0
  while (at < buffer.length) {
    const next = decodeOne(buffer, at, flush === 'that is all')
    if (next === 'wait') break
    if (next.key !== undefined) addKey(keys, next.key)
    at = next.end
  }
  return { keys, rest: buffer.slice(at) }
}

interface One {
  readonly key: Key | undefined
  readonly end: number
}

function decodeOne(buffer: string, at: number, flush: boolean): One | 'wait' {
  const char = buffer[at] ?? ''
  if (char === ESC) return decodeEscape(buffer, at, flush)
  const name = CONTROLS[char]
  if (name !== undefined) return { key: { kind: 'key', name }, end: at + 1 }
  if (char < ' ' || (char >= '\u0080' && char < '\u00A0')) return { key: undefined, end: at + 1 }
  PRINTABLE.lastIndex = at
  const text = PRINTABLE.exec(buffer)?.[0] ?? char
  return { key: { kind: 'text', text }, end: at + text.length }
}

const ESC = '\u001B'
const PRINTABLE = /[^\u0000-\u001F\u007F-\u009F]+/y
const CONTROLS: Readonly<Record<string, KeyName>> = {
  '\r': 'enter',
  '\n': 'enter',
  '\t': 'tab',
  '\u007F': 'backspace',
  '\b': 'backspace',
  '\u0003': 'leave',
  '\u001A': 'suspend',
  '\u0015': 'clear',
  '\u0017': 'clear-word',
}

/** Two pieces of text in a row are one event, however the bytes were cut. */
function addKey(keys: Key[], key: Key): void {
  const last = keys.at(-1)
  if (key.kind === 'text' && last?.kind === 'text') keys[keys.length - 1] = { kind: 'text', text: last.text + key.text }
  else keys.push(key)
}

const PASTE_START = `${ESC}[200~`
const PASTE_END = `${ESC}[201~`
const STRING_STARTS = new Set([']', 'P', 'X', '^', '_'])

function decodeEscape(buffer: string, at: number, flush: boolean): One | 'wait' {
  const second = buffer[at + 1]
  const loneEsc: One = { key: { kind: 'key', name: 'esc' }, end: at + 1 }
  if (second === undefined) return flush ? loneEsc : 'wait'
  if (second === '[') return decodeSequence(buffer, at, flush)
  if (second === 'O') return decodeShort(buffer, at, flush)
  return STRING_STARTS.has(second) ? decodeString(buffer, at, flush) : loneEsc
}

/** `ESC [ … letter`. What is cut off by the end of the bytes waits; on flush it is passed over. */
function decodeSequence(buffer: string, at: number, flush: boolean): One | 'wait' {
  if (buffer.startsWith(PASTE_START, at)) return decodePaste(buffer, at, flush)
  if (buffer[at + 2] === 'M') return mouse(buffer, at, flush)
  SEQUENCE.lastIndex = at
  const found = SEQUENCE.exec(buffer)
  if (found === null) return unfinished(buffer, at, flush)
  const [whole, parameters = '', letter = ''] = found
  const name = letter === '~' ? NUMBERED[parameters.split(';')[0] ?? ''] : (LETTERED[letter] ?? undefined)
  return { key: name === undefined ? undefined : { kind: 'key', name }, end: at + whole.length }
}

const SEQUENCE = /\u001B\[\[?([0-?]*)[ -/]*([@-~])/y
const UNFINISHED = /\u001B\[\[?[0-?]*[ -/]*/y
const LETTERED: Readonly<Record<string, KeyName>> = {
  A: 'up',
  B: 'down',
  C: 'right',
  D: 'left',
  H: 'home',
  F: 'end',
  Z: 'shift-tab',
  P: 'f1',
  Q: 'f2',
  S: 'f4',
}
const NUMBERED: Readonly<Record<string, KeyName>> = {
  '1': 'home',
  '3': 'delete',
  '4': 'end',
  '5': 'page-up',
  '6': 'page-down',
  '7': 'home',
  '8': 'end',
  '11': 'f1',
  '12': 'f2',
  '14': 'f4',
}

/** A sequence broken off by a byte that cannot belong to it, or by the end of the bytes. */
function unfinished(buffer: string, at: number, flush: boolean): One | 'wait' {
  UNFINISHED.lastIndex = at
  const end = at + (UNFINISHED.exec(buffer)?.[0].length ?? 1)
  return end >= buffer.length && !flush ? 'wait' : { key: undefined, end }
}

const MOUSE_LENGTH = 6
function mouse(buffer: string, at: number, flush: boolean): One | 'wait' {
  const end = at + MOUSE_LENGTH
  if (buffer.length < end && !flush) return 'wait'
  return { key: undefined, end: Math.min(end, buffer.length) }
}

/** `ESC O letter`: arrows and F1 … F4 of some terminals. */
function decodeShort(buffer: string, at: number, flush: boolean): One | 'wait' {
  const letter = buffer[at + 2]
  if (letter === undefined) return flush ? { key: { kind: 'key', name: 'esc' }, end: at + 1 } : 'wait'
  const name = LETTERED[letter]
  return { key: name === undefined ? undefined : { kind: 'key', name }, end: at + 3 }
}

function decodePaste(buffer: string, at: number, flush: boolean): One | 'wait' {
  const from = at + PASTE_START.length
  const end = buffer.indexOf(PASTE_END, from)
  if (end < 0 && !flush) return 'wait'
  const text = buffer.slice(from, end < 0 ? buffer.length : end)
  return { key: { kind: 'paste', text }, end: end < 0 ? buffer.length : end + PASTE_END.length }
}

/** Replies of the terminal (`ESC ] … BEL`): passed over to their end. */
function decodeString(buffer: string, at: number, flush: boolean): One | 'wait' {
  STRING_END.lastIndex = at + 2
  const found = STRING_END.exec(buffer)
  if (found === null) return flush ? { key: undefined, end: buffer.length } : 'wait'
  return { key: undefined, end: found.index + found[0].length }
}

const STRING_END = /\u0007|\u001B\\/g
