/** The structure a screen reader follows: each piece of text is tagged as it is drawn. */
export interface Tags {
  /** Draws text under a tag of the document: H1, H2, P. */
  readonly put: (tag: string, draw: () => void) => void
  /** Draws a picture with the sentence that stands for it. */
  readonly figure: (says: string, draw: () => void) => void
  /** Draws what is no content: rules, bars, boxes, page numbers. */
  readonly artifact: (draw: () => void) => void
  /** A table, filled row by row; it enters the document with its first row. */
  readonly branch: (tag: string) => TagBranch
  readonly end: () => void
}

export interface TagBranch {
  readonly row: () => { readonly cell: (tag: 'TH' | 'TD', draw: () => void) => void }
}

export function tagsOf(doc: PDFKit.PDFDocument): Tags {
  const root = doc.struct('Document')
  doc.addStructure(root)
  return {
    put: (tag, draw) => {
      root.add(doc.struct(tag, {}, draw))
    },
    figure: (says, draw) => {
      root.add(doc.struct('Figure', { alt: says }, draw))
    },
    artifact: (draw) => {
      doc.markContent('Artifact')
      draw()
      doc.endMarkedContent()
    },
    branch: (tag) => branchOf(doc, root, tag),
    end: () => {
      root.end()
    },
  }
}

function branchOf(doc: PDFKit.PDFDocument, root: PDFKit.PDFStructureElement, tag: string): TagBranch {
  let table: PDFKit.PDFStructureElement | undefined
  return {
    row: () => {
      if (table === undefined) {
        table = doc.struct(tag)
        root.add(table)
      }
      const row = doc.struct('TR')
      table.add(row)
      return {
        cell: (cellTag, draw) => {
          row.add(doc.struct(cellTag, {}, draw))
        },
      }
    },
  }
}
