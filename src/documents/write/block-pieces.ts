import type { Block, Fact } from '../block.ts'
import { drawingPiece } from './drawing-piece.ts'
import { factPieces } from './fact-pieces.ts'
import type { PageArea } from './page-look.ts'
import { MM, TYPE, WEIGHT, WORD_GAP, WORD_WIDTH } from './page-look.ts'
import type { PaperPen, TextLook } from './paper-pen.ts'
import type { Piece } from './piece.ts'
import { tablePieces } from './table-pieces.ts'
import type { Tags } from './tags.ts'

/** What pieces are drawn with. */
export interface Bench {
  readonly pen: PaperPen
  readonly tags: Tags
  readonly area: PageArea
}

const GAP = 8

/** The pieces of a block, in order, measured. */
export function blockPieces(block: Block, bench: Bench, group?: object): readonly Piece[] {
  switch (block.kind) {
    case 'together': {
      const own = group ?? {}
      return block.blocks.flatMap((b) => blockPieces(b, bench, own))
    }
    case 'chapter':
      return chapterPieces(block, bench)
    case 'heading':
      return [
        {
          ...wordsPiece(block.text, { type: 'heading', bold: true }, 'H2', bench, { group, before: 2 * GAP }),
          leads: true,
        },
      ]
    case 'paragraph':
      return [wordsPiece(block.text, { type: 'text' }, 'P', bench, { group, before: GAP })]
    case 'list':
      return block.items.map((item, i) =>
        wordsPiece(`–  ${item}`, { type: 'text' }, 'P', bench, { group, before: i === 0 ? GAP : 1 }),
      )
    case 'note':
      return factPieces(cautionOf(block.text), bench, group)
    case 'fact':
      return factPieces(block, bench, group)
    case 'table':
      return tablePieces(block, bench)
    case 'drawing':
      return [drawingPiece(block, bench, group)]
    case 'space':
      return [{ height: 0, before: GAP, group, leads: true, draw: () => undefined }]
  }
}

type Chapter = Extract<Block, { readonly kind: 'chapter' }>

/** The name over a rule, then its blocks; every one of them knows the name, for the head of a page. */
function chapterPieces({ text, blocks }: Chapter, bench: Bench): readonly Piece[] {
  const named: Piece = {
    ...chapterName(text, { type: 'heading', bold: true }, 'H2', bench),
    before: GAP + 4,
    leads: true,
  }
  const head = chapterName(`${text}, goes on`, { type: 'small', bold: true }, 'P', bench)
  const own = blocks.flatMap((b) => blockPieces(b, bench))
  return [named, ...own.map((piece) => (piece.head === undefined ? { ...piece, head } : piece))]
}

function chapterName(text: string, look: TextLook, tag: string, { pen, tags, area }: Bench): Piece {
  const height = Math.max(pen.heightOf(text, area.width, look), TYPE[look.type].line)
  return {
    height: height + 4,
    before: 0,
    group: undefined,
    draw: (y) => {
      tags.artifact(() => {
        pen.doc
          .lineWidth(WEIGHT.heading)
          .moveTo(area.left, y)
          .lineTo(area.left + area.width, y)
          .stroke('black')
      })
      tags.put(tag, () => pen.write(text, { x: area.left, y: y + 3, width: area.width }, look))
    },
  }
}

const cautionOf = (text: string): Fact => ({ kind: 'fact', word: 'caution', lines: [text], bar: true })

/** Words in the column of facts. */
function wordsPiece(
  text: string,
  look: TextLook,
  tag: string,
  { pen, tags, area }: Bench,
  { group, before }: { readonly group: object | undefined; readonly before: number },
): Piece {
  const x = area.left + (WORD_WIDTH + WORD_GAP) * MM
  const width = area.left + area.width - x
  const height = Math.max(pen.heightOf(text, width, look), TYPE[look.type].line)
  return {
    height,
    before,
    group,
    draw: (y) => tags.put(tag, () => pen.write(text, { x, y, width }, look)),
  }
}
