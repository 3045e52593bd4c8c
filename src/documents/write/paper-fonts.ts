import type { Assets } from '../document.ts'
import type { PdfDocument } from './paper-pen.ts'

/** An opened font; its letters are read as they are first set, and then known. The types of the PDF library do not know it. */
interface OpenFont {
  readonly hasGlyphForCodePoint: (code: number) => boolean
}

/** Reading a font takes longer than setting a paper in it: each is opened once, and every paper sets its text in that. */
const opened = new WeakMap<Uint8Array, OpenFont>()

/** Gives a document its two fonts, `regular` and `bold`. The same in every document, so that the same paper is the same bytes. */
export function setFonts(doc: PdfDocument, { regular, bold }: Assets['fonts']): void {
  setFont(doc, 'regular', regular)
  setFont(doc, 'bold', bold)
}

function setFont(doc: PdfDocument, name: string, bytes: Uint8Array): void {
  doc.registerFont(name, (opened.get(bytes) ?? Buffer.from(bytes)) as Buffer)
  doc.font(name)
  opened.set(bytes, openFont(doc))
}

/** The font a document writes in now. */
export const openFont = (doc: PdfDocument): OpenFont =>
  (doc as unknown as { readonly _font: { readonly font: OpenFont } })._font.font
