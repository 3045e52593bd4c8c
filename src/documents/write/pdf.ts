import { showDayAndYear } from '../../units/day.ts'
import type { Paper, Section } from '../block.ts'
import type { Assets, Stamp } from '../document.ts'
import { blockPieces } from './block-pieces.ts'
import { type PageArea, pageArea, TYPE } from './page-look.ts'
import { setFonts } from './paper-fonts.ts'
import { type PaperPen, type PdfDocument, paperPen } from './paper-pen.ts'
import { type Piece, paginate } from './piece.ts'
import { type Tags, tagsOf } from './tags.ts'

/** The paper as a tagged PDF: same paper, fonts and stamp, same bytes. */
export async function writePdf(paper: Paper, assets: Assets, stamp: Stamp): Promise<Uint8Array> {
  return (await written(paper, assets, stamp)).bytes
}

/** The first of several wordings, fullest first, that stays on one page; the last one when none does. */
export async function writeOnePage(wordings: readonly Paper[], assets: Assets, stamp: Stamp): Promise<Uint8Array> {
  const [fullest, ...shorter] = wordings
  if (fullest === undefined) throw new RangeError('A page has at least one wording.')
  const { bytes, pages } = await written(fullest, assets, stamp)
  return pages <= 1 || shorter.length === 0 ? bytes : writeOnePage(shorter, assets, stamp)
}

async function written(
  paper: Paper,
  assets: Assets,
  stamp: Stamp,
): Promise<{ readonly bytes: Uint8Array; readonly pages: number }> {
  const { default: PDFDocument } = await import('pdfkit')
  const doc = new PDFDocument(optionsOf(paper, stamp))
  setFonts(doc, assets.fonts)
  const bytes = collected(doc)
  const pen = paperPen(doc)
  const tags = tagsOf(doc)
  for (const section of paper.sections) writeSection(section, { paper, pen, tags })
  writeFeet(paper, stamp, pen, tags)
  const pages = doc.bufferedPageRange().count
  tags.end()
  doc.end()
  return { bytes: await bytes, pages }
}

/** Noon in UTC on the stamp's day: the only time a document knows. */
const momentOf = (stamp: Stamp): Date => new Date(`${stamp.date}T12:00:00Z`)

const optionsOf = (paper: Paper, stamp: Stamp): PDFKit.PDFDocumentOptions => ({
  autoFirstPage: false,
  bufferPages: true,
  tagged: true,
  lang: 'en-US',
  displayTitle: true,
  pdfVersion: '1.7',
  info: {
    Title: `${paper.job} · ${paper.name}`,
    Creator: stamp.tool,
    Producer: stamp.tool,
    CreationDate: momentOf(stamp),
    ModDate: momentOf(stamp),
  },
})

function collected(doc: PdfDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = []
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk))
    doc.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))))
    doc.on('error', reject)
  })
}

interface Desk {
  readonly paper: Paper
  readonly pen: PaperPen
  readonly tags: Tags
}

function writeSection(section: Section, { paper, pen, tags }: Desk): void {
  const area = pageArea(paper.size, section.turned)
  const bench = { pen, tags, area }
  const pieces = [
    titlePiece(section, { paper, pen, tags }, area),
    ...section.blocks.flatMap((b) => blockPieces(b, bench)),
  ]
  for (const page of paginate(pieces, area.height)) {
    pen.doc.addPage({ size: [area.pageWidth, area.pageHeight], margin: 0 })
    for (const { piece, y } of page) piece.draw(area.top + y)
  }
}

/** The title in large type, what it is in small: the only thing that spans both columns. */
function titlePiece(section: Section, { pen, tags }: Desk, area: PageArea): Piece {
  const title = { type: 'title', bold: true } as const
  const under = { type: 'small' } as const
  const titleHeight = Math.max(pen.heightOf(section.title, area.width, title), TYPE.title.line)
  const underHeight = section.under === '' ? 0 : pen.heightOf(section.under, area.width, under)
  return {
    height: titleHeight + underHeight + 4,
    before: 0,
    group: undefined,
    draw: (y) => {
      tags.put('H1', () => pen.write(section.title, { x: area.left, y, width: area.width }, title))
      if (section.under === '') return
      tags.put('P', () => pen.write(section.under, { x: area.left, y: y + titleHeight, width: area.width }, under))
    },
  }
}

/** One line at the foot of each page, written when the count of pages is known. */
function writeFeet(paper: Paper, stamp: Stamp, pen: PaperPen, tags: Tags): void {
  const { start, count } = pen.doc.bufferedPageRange()
  for (let page = 0; page < count; page += 1) {
    pen.doc.switchToPage(start + page)
    const turned = pen.doc.page.width > pen.doc.page.height ? 'landscape' : 'upright'
    const area = pageArea(paper.size, turned)
    const y = area.pageHeight - FOOT
    const revision = `revision ${stamp.revision} · ${showDayAndYear(stamp.date)}`
    const says = `${paper.job} · ${paper.name} · ${revision} · page ${page + 1} of ${count}`
    tags.artifact(() => pen.write(says, { x: area.left, y, width: area.width }, { type: 'small' }))
  }
}

/** The foot line stands 12 mm above the paper's lower edge, in points. */
const FOOT = 34
