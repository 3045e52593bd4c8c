import { describe, expect, it } from 'vitest'
import { pieceName, pieceWords } from '../../../src/plan/panels/piece-name.ts'

describe('names of pieces on the saw sheet', () => {
  it('take turns in letters and numbers, from the sheet down', () => {
    expect(pieceName('', 0)).toBe('A')
    expect(pieceName('', 27)).toBe('AB')
    expect(pieceName('B', 1)).toBe('B2')
    expect(pieceName('B2', 0)).toBe('B2a')
    expect(pieceName('B2a', 10)).toBe('B2a11')
  })

  it('are never given twice', () => {
    const under = (name: string, deep: number): readonly string[] =>
      Array.from({ length: deep === 4 ? 30 : 12 }, (_, at) => pieceName(name, at)).flatMap((child) =>
        deep === 1 ? [child] : [child, ...under(child, deep - 1)],
      )
    const names = under('', 4)
    expect(new Set(names).size).toBe(names.length)
  })

  it('come with the size they are known by', () => {
    expect(pieceWords('B', 'along', '12 3/16')).toBe('strip B, 12 3/16 wide')
    expect(pieceWords('B1', 'across', '18')).toBe('piece B1, 18 long')
  })
})
