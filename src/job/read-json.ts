/** A place inside a JSON document: `['choices', 'a', 'plinth']`. */
export type JsonPath = readonly (string | number)[]

export interface JsonDocument {
  readonly value: unknown
  /** Line of the value at this path, from 1; of the nearest value above it when there is none there. */
  readonly lineAt: (path: JsonPath) => number
}

export type JsonReading =
  | { readonly ok: true; readonly document: JsonDocument }
  | { readonly ok: false; readonly line: number; readonly fault: string }

const MOST_DEEP = 32
const MOST_VALUES = 200_000
/** Names that would reach into the program's own objects. */
const REFUSED_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype'])

/**
 * Reads JSON as RFC 8259 writes it, keeping the line of each value. Stricter than the language's own reader: a key that
 * stands twice, a number too large to hold exactly, keys that would change objects, and a document nested deeper than 32
 * or of more than 200 000 values are refused by name and line.
 */
export function readJson(text: string): JsonReading {
  const scan = new Scan(text)
  try {
    const value = scan.document()
    const lines = scan.lines
    return { ok: true, document: { value, lineAt: (path) => lineOf(lines, path) } }
  } catch (error) {
    if (error instanceof Fault) return { ok: false, line: scan.line, fault: error.message }
    throw error
  }
}

const keyOf = (path: JsonPath): string => JSON.stringify(path)

function lineOf(lines: ReadonlyMap<string, number>, path: JsonPath): number {
  for (let length = path.length; length > 0; length--) {
    const line = lines.get(keyOf(path.slice(0, length)))
    if (line !== undefined) return line
  }
  return 1
}

class Fault extends Error {}

const BLANK = /[ \t\r\n]*/y
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y
const HALF_CHARACTER = /\p{Surrogate}/u
const WORDS: ReadonlyMap<string, unknown> = new Map<string, unknown>([
  ['true', true],
  ['false', false],
  ['null', null],
])

function unquoted(written: string): string | undefined {
  try {
    return String(JSON.parse(written))
  } catch {
    return undefined
  }
}

/** One pass over the text. The only state of the reader; it lives for one call. */
class Scan {
  readonly lines = new Map<string, number>()
  private at = 0
  private values = 0
  constructor(private readonly text: string) {}

  get line(): number {
    return this.text.slice(0, this.at).split('\n').length
  }

  document(): unknown {
    const value = this.value([])
    if (this.at < this.text.length) throw new Fault('there is more text after the end of the document.')
    return value
  }

  private value(path: JsonPath): unknown {
    this.take(BLANK)
    if (path.length > MOST_DEEP) throw new Fault(`this is nested more than ${MOST_DEEP} deep.`)
    if (++this.values > MOST_VALUES) throw new Fault(`there are more than ${MOST_VALUES} values.`)
    this.lines.set(keyOf(path), this.lineHere())
    const value = this.bare(path)
    this.take(BLANK)
    return value
  }

  private bare(path: JsonPath): unknown {
    const first = this.text[this.at]
    if (first === '{') return this.object(path)
    if (first === '[') return this.array(path)
    if (first === '"') return this.string()
    if (first !== undefined && '-0123456789'.includes(first)) return this.number()
    for (const [word, value] of WORDS) {
      if (this.text.startsWith(word, this.at)) {
        this.at += word.length
        return value
      }
    }
    throw new Fault(first === undefined ? 'the text ends too early.' : `a value should stand here, not ${this.near()}.`)
  }

  private object(path: JsonPath): unknown {
    const entries = new Map<string, unknown>()
    this.each('}', () => {
      const key = this.key()
      const line = this.lineHere()
      const before = this.lines.get(keyOf([...path, key]))
      if (entries.has(key)) throw new Fault(`"${key}" stands twice (lines ${before} and ${line}): keep one of the two.`)
      this.symbol(':')
      entries.set(key, this.value([...path, key]))
    })
    return Object.fromEntries(entries)
  }

  private array(path: JsonPath): unknown {
    const items: unknown[] = []
    this.each(']', () => items.push(this.value([...path, items.length])))
    return items
  }

  /** The members between an opening mark, where the scan stands, and its closing one. */
  private each(close: string, member: () => void): void {
    this.at++
    this.take(BLANK)
    if (this.text[this.at] === close) {
      this.at++
      return
    }
    do member()
    while (this.more(close))
  }

  private more(close: string): boolean {
    const mark = this.text[this.at]
    if (mark !== ',' && mark !== close) throw new Fault(`a comma or ${close} should stand here, not ${this.near()}.`)
    this.at++
    return mark === ','
  }

  private key(): string {
    this.take(BLANK)
    if (this.text[this.at] !== '"') throw new Fault(`a name in double quotes should stand here, not ${this.near()}.`)
    const key = this.string()
    if (REFUSED_KEYS.has(key)) throw new Fault(`the name "${key}" cannot be used: take it out.`)
    return key
  }

  private symbol(mark: string): void {
    this.take(BLANK)
    if (this.text[this.at] !== mark) throw new Fault(`${mark} should stand here, not ${this.near()}.`)
    this.at++
  }

  private string(): string {
    const end = this.endOfString()
    const written = this.text.slice(this.at, end)
    const text = unquoted(written)
    if (text === undefined)
      throw new Fault(`the text ${written.slice(0, 20)} holds a backslash that means nothing here.`)
    if (HALF_CHARACTER.test(text)) throw new Fault('this text holds half a character.')
    this.at = end
    return text
  }

  private endOfString(): number {
    for (let at = this.at + 1; at < this.text.length; at++) {
      const letter = this.text[at] ?? ''
      if (letter === '"') return at + 1
      if (letter < ' ') throw new Fault('a text in quotes ends on its own line; write \\n for a new line inside it.')
      if (letter === '\\') at++
    }
    throw new Fault('a text in quotes does not end.')
  }

  private number(): number {
    const written = this.take(NUMBER)
    if (written === '') throw new Fault(`a number should stand here, not ${this.near()}.`)
    const value = Number(written)
    const exact = Number.isInteger(value) ? Number.isSafeInteger(value) : Number.isFinite(value)
    if (!exact) throw new Fault(`the number ${written.slice(0, 40)} is too large.`)
    return value
  }

  private take(pattern: RegExp): string {
    pattern.lastIndex = this.at
    const found = pattern.exec(this.text)?.[0] ?? ''
    this.at += found.length
    return found
  }

  private counted = { at: 0, line: 1 }
  /** The line where the scan stands; counts on from the last call, so that a document is counted once. */
  private lineHere(): number {
    let { at, line } = this.counted
    for (; at < this.at; at++) if (this.text[at] === '\n') line++
    this.counted = { at: this.at, line }
    return line
  }

  private near(): string {
    const rest = this.text.slice(this.at, this.at + 12).split('\n')[0] ?? ''
    return rest === '' ? 'the end of the text' : `"${rest}"`
  }
}
