import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decodeKeys } from '../../src/screens/keys/decode-keys.ts'
import type { Key } from '../../src/screens/keys/key.ts'

const names = (bytes: string) =>
  decodeKeys(bytes, 'that is all').keys.map((k) => (k.kind === 'key' ? k.name : `${k.kind} ${k.text}`))

describe('one event a key', () => {
  it.each([
    ['41 1/4\r', ['text 41 1/4', 'enter']],
    ['\u007F\u007F\u007F', ['backspace', 'backspace', 'backspace']],
    ['\u001B[A\u001B[B\u001BOA', ['up', 'down', 'up']],
    ['\u001B', ['esc']],
    ['\u001B\u001B', ['esc', 'esc']],
    ['\u001Bw', ['esc', 'text w']],
    ['\u001B[200~4 41\r36 41\u001B[201~\r', ['paste 4 41\r36 41', 'enter']],
    ['\u001B[1;5P\u001B[1;5R', ['f1']],
    ['\u001BOP\u001B[11~\u001B[[A', ['f1', 'f1', 'up']],
    ['\u001B[<0;3;4M\u001B[M abc', ['text c']],
    ['\u001B]11;rgb:0/0/0\u0007x', ['text x']],
    ['\u001B[5~\u001B[6~\u001B[3~\u001B[H\u001B[4~', ['page-up', 'page-down', 'delete', 'home', 'end']],
    ['\u0003\u001A\u0015\u0017', ['leave', 'suspend', 'clear', 'clear-word']],
  ])('%j', (bytes, expected) => {
    expect(names(bytes)).toEqual(expected)
  })
})

/** Text that arrives in pieces is the same text. */
const joined = (keys: readonly Key[]) => keys.map((k) => (k.kind === 'text' ? k.text : JSON.stringify(k))).join('')

it('any cutting of any bytes gives the same keys', () => {
  const piece = fc.oneof(
    fc.constantFrom(
      '\u001B[A',
      '\u001B[200~a\rb\u001B[201~',
      '\r',
      '\u007F',
      '\u001BOP',
      '41 1/4',
      '\u001B]0;x\u0007',
      '\u001B[3~',
    ),
    fc.string({ unit: 'binary', maxLength: 4 }),
  )
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 12 }), fc.array(fc.nat(60), { maxLength: 8 }), (pieces, cuts) => {
      const bytes = pieces.join('')
      const ends = [...cuts.filter((c) => c < bytes.length).sort((a, b) => a - b), bytes.length]
      let rest = ''
      let from = 0
      const keys: Key[] = []
      for (const end of ends) {
        const decoded = decodeKeys(rest + bytes.slice(from, end), 'more may come')
        keys.push(...decoded.keys)
        rest = decoded.rest
        from = end
      }
      keys.push(...decodeKeys(rest, 'that is all').keys)
      return joined(keys) === joined(decodeKeys(bytes, 'that is all').keys)
    }),
    { numRuns: 2000 },
  )
})
