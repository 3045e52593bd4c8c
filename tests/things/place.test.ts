import { expect, it } from 'vitest'
import { namedBays } from '../../src/things/place.ts'

const kinds = (...list: readonly ('alcove' | 'breast' | 'flat')[]) =>
  namedBays(list.map((kind, i) => ({ id: String.fromCharCode(97 + i), kind })))

it('letters bays as seen from the room: M, L R, L M R, then W1 W2 …', () => {
  expect(kinds('alcove').map((b) => b.letter)).toEqual(['M'])
  expect(kinds('alcove', 'breast').map((b) => b.letter)).toEqual(['L', 'R'])
  expect(kinds('alcove', 'breast', 'alcove').map((b) => b.letter)).toEqual(['L', 'M', 'R'])
  expect(kinds('alcove', 'breast', 'alcove', 'flat').map((b) => b.letter)).toEqual(['W1', 'W2', 'W3', 'W4'])
})

it('names a bay by its side only where another of its kind stands on the wall', () => {
  expect(kinds('alcove', 'breast', 'alcove').map((b) => b.name)).toEqual(['left alcove', 'breast', 'right alcove'])
})
