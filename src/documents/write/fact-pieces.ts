import type { Fact } from '../block.ts'
import type { Bench } from './block-pieces.ts'
import { BAR_WIDTH, MM, TICK_SIDE, TYPE, WEIGHT, WORD_GAP, WORD_WIDTH } from './page-look.ts'
import type { TextLook } from './paper-pen.ts'
import type { Piece } from './piece.ts'

const LOOKS: Readonly<Record<NonNullable<Fact['weight']>, TextLook>> = {
  plain: { type: 'text' },
  bold: { type: 'text', bold: true },
  total: { type: 'heading', bold: true },
}
/** Words that are bold and stand in capitals: they mean stop. */
const LOUD = ['HOLD', 'Stop', 'caution']

/** White above a fact, points: less between facts that belong together. */
const BETWEEN_FACTS = 4
const WITHIN_GROUP = 1.5

/** A word and its facts: one piece a line, so that a long list may go on over the page. */
export function factPieces(fact: Fact, bench: Bench, group: object | undefined): readonly Piece[] {
  const own = group ?? (fact.lines.length <= 4 ? {} : undefined)
  const before = group === undefined ? BETWEEN_FACTS : WITHIN_GROUP
  return fact.lines.map((text, i) => ({ ...linePiece(fact, text, i, bench), before: i === 0 ? before : 0, group: own }))
}

function linePiece(fact: Fact, text: string, i: number, bench: Bench): Omit<Piece, 'before' | 'group'> {
  const { pen, tags, area } = bench
  const look = LOOKS[fact.weight ?? 'plain']
  const wordLook: TextLook = { type: 'text', bold: LOUD.includes(fact.word) || look.bold === true }
  const x = area.left + (WORD_WIDTH + WORD_GAP) * MM
  const end = rightEnd(fact, i, bench)
  const width = area.left + area.width - x - end.width
  const textHeight = pen.heightOf(text, width, look)
  const wordHeight = i === 0 ? pen.heightOf(fact.word, WORD_WIDTH * MM, wordLook) : 0
  const height = Math.max(textHeight, wordHeight, TYPE[look.type].line, end.height)
  const draw = (y: number) => {
    tags.put('P', () => {
      if (i === 0 && fact.word !== '') pen.write(fact.word, { x: area.left, y, width: WORD_WIDTH * MM }, wordLook)
      pen.write(text, { x, y, width }, look)
      end.write(y)
    })
    tags.artifact(() => {
      if (fact.bar === true) drawBar(bench, y, height)
      end.draw(y)
    })
  }
  return { height, draw }
}

interface RightEnd {
  readonly width: number
  readonly height: number
  readonly write: (y: number) => void
  readonly draw: (y: number) => void
}

/** What stands at the right end of a fact's first line: figures, then a box to tick. */
function rightEnd(fact: Fact, i: number, { pen, area }: Bench): RightEnd {
  const nothing = () => undefined
  if (i > 0) return { width: 0, height: 0, write: nothing, draw: nothing }
  const look: TextLook = { ...LOOKS[fact.weight ?? 'plain'], align: 'right' }
  const box = fact.tick === true ? (TICK_SIDE + 3) * MM : 0
  const words = fact.right === undefined ? 0 : pen.widthOf(fact.right, look) + 12
  const right = area.left + area.width
  return {
    width: box + words,
    height: fact.tick === true ? TICK_SIDE * MM + 2 : 0,
    write: (y) => {
      if (fact.right !== undefined) pen.write(fact.right, { x: right - box - words, y, width: words + 0.5 }, look)
    },
    draw: (y) => {
      if (fact.tick === true) drawTick(pen.doc, right - TICK_SIDE * MM, y)
    },
  }
}

/** The bar in the margin. */
export function drawBar({ pen, area }: Bench, y: number, height: number): void {
  pen.doc.rect(area.left - (BAR_WIDTH + 3) * MM, y - 1, BAR_WIDTH * MM, height + 1).fill('black')
}

/** An empty box to tick. */
export function drawTick(doc: PDFKit.PDFDocument, x: number, y: number): void {
  doc
    .lineWidth(WEIGHT.edge)
    .rect(x, y, TICK_SIDE * MM, TICK_SIDE * MM)
    .stroke('black')
}
