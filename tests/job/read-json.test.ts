import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readJson } from '../../src/job/read-json.ts'

const faultOf = (text: string): string => {
  const reading = readJson(text)
  return reading.ok ? 'read' : `line ${reading.line}: ${reading.fault}`
}

describe('reading JSON with its lines', () => {
  it('reads what the language itself reads (RFC 8259), where no key is refused and no number is inexact', () => {
    // biome-ignore lint/nursery/noFloatingPromises: a property without async gives no promise
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), fc.constantFrom(undefined, 1, '\t'), (value, indent) => {
        const text = JSON.stringify(value, undefined, indent)
        const reading = readJson(text)
        const refused =
          /"(__proto__|constructor|prototype)":/.test(text) || hasInexact(value) || /\\ud[89a-f]/i.test(text)
        if (!refused) expect(reading.ok && reading.document.value).toEqual(JSON.parse(text))
      }),
      { numRuns: 1000 },
    )
  })

  it('knows the line of every value, and of what stands above one that is missing', () => {
    const reading = readJson('{\n "a": [\n  1,\n  {"b": 2}\n ]\n}')
    if (!reading.ok) expect.fail(reading.fault)
    expect([[], ['a'], ['a', 0], ['a', 1, 'b'], ['a', 7], ['c']].map((path) => reading.document.lineAt(path))).toEqual([
      1, 2, 3, 4, 2, 1,
    ])
  })

  it.each([
    ['{"a":1,\n"a":2}', 'line 2: "a" stands twice (lines 1 and 2)'],
    ['{"__proto__":{}}', 'the name "__proto__" cannot be used'],
    ['{"constructor":{}}', 'the name "constructor" cannot be used'],
    ['1e400', 'the number 1e400 is too large'],
    ['9007199254740993', 'is too large'],
    ['[1,]', 'a value should stand here, not "]"'],
    ['{"a" 1}', ': should stand here, not "1}"'],
    ['[1 2]', 'a comma or ] should stand here, not "2]"'],
    ['{a:1}', 'a name in double quotes should stand here'],
    ['01', 'there is more text after the end'],
    ['"\\x"', 'a backslash that means nothing'],
    ['"\\ud800"', 'half a character'],
    ['"a\nb"', 'a text in quotes ends on its own line'],
    ['"a', 'a text in quotes does not end'],
    ['', 'the text ends too early'],
    ['nul', 'a value should stand here, not "nul"'],
  ])('says where and what is wrong with %s', (text, said) => {
    expect(faultOf(text)).toContain(said)
  })

  it('stops at 32 levels and 200 000 values', () => {
    expect(faultOf('['.repeat(200_000))).toContain('more than 32 deep')
    expect(faultOf(`[${'1,'.repeat(200_000)}1]`)).toContain('more than 200000 values')
    expect(faultOf(`${'['.repeat(32)}1${']'.repeat(32)}`)).toBe('read')
  })

  it('keeps objects as they are: nothing in a document reaches the prototype', () => {
    const reading = readJson('{"a": {"x": 1, "toString": 2}}')
    expect(reading.ok && Object.getPrototypeOf(reading.document.value)).toBe(Object.prototype)
    expect(Object.hasOwn({}, 'x')).toBe(false)
  })
})

function hasInexact(value: unknown): boolean {
  if (typeof value === 'number') return Number.isInteger(value) && !Number.isSafeInteger(value)
  return typeof value === 'object' && value !== null && Object.values(value).some(hasInexact)
}
