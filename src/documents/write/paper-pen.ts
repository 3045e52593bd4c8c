import { TYPE, type TypeSize } from './page-look.ts'
import { openFont } from './paper-fonts.ts'

export type PdfDocument = PDFKit.PDFDocument

export interface TextLook {
  readonly type: TypeSize
  readonly bold?: boolean
  readonly align?: 'left' | 'right' | 'center'
}

/** Writes and measures text on the current page; every text passes through it, so a missing letter never goes unseen. */
export interface PaperPen {
  readonly doc: PdfDocument
  /** Height of the text when it is set in `width` points. */
  readonly heightOf: (text: string, width: number, look: TextLook) => number
  readonly widthOf: (text: string, look: TextLook) => number
  readonly write: (
    text: string,
    at: { readonly x: number; readonly y: number; readonly width: number },
    look: TextLook,
  ) => void
}

/** What stands for a letter that the font does not hold. */
const MISSING = '\u25a1'

export function paperPen(doc: PdfDocument): PaperPen {
  const readable = readableIn(doc)
  const heights = new Map<string, number>()
  const set = (look: TextLook): number => {
    const { size, line } = TYPE[look.type]
    doc.font(look.bold === true ? 'bold' : 'regular').fontSize(size)
    return line - doc.currentLineHeight(false)
  }
  return {
    doc,
    heightOf: (text, width, look) => {
      // The same cautions and tools stand in many steps: each is measured once.
      const key = `${look.type} ${look.bold === true} ${width} ${text}`
      const known = heights.get(key)
      if (known !== undefined) return known
      const lineGap = set(look)
      const height = doc.heightOfString(readable(text), { width, lineGap })
      heights.set(key, height)
      return height
    },
    widthOf: (text, look) => {
      set(look)
      return doc.widthOfString(readable(text))
    },
    write: (text, at, look) => {
      const lineGap = set(look)
      doc.text(readable(text), at.x, at.y, { width: at.width, lineGap, align: look.align ?? 'left' })
    },
  }
}

/** Replaces what the regular font cannot draw; control characters become spaces. */
function readableIn(doc: PdfDocument): (text: string) => string {
  doc.font('regular')
  const known = new Map<string, string>()
  const font = openFont(doc)
  return (text) => {
    let out = ''
    for (const letter of text.normalize('NFC')) {
      let shown = known.get(letter)
      if (shown === undefined) {
        const code = letter.codePointAt(0) ?? 0
        shown = code < 32 || code === 127 ? ' ' : font.hasGlyphForCodePoint(code) ? letter : MISSING
        known.set(letter, shown)
      }
      out += shown
    }
    return out
  }
}
