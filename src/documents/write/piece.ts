/** A strip of a page that is never cut: measured before it is drawn. Heights in points. */
export interface Piece {
  readonly height: number
  /** White space above, dropped at the head of a page. */
  readonly before: number
  /** Pieces of one group stay on one page when the group fits on one. */
  readonly group: object | undefined
  /** Never last on a page: a heading, or the white above a step. */
  readonly leads?: boolean
  /** Drawn again when this piece comes first on a page: the head of a table. */
  readonly head?: Piece
  readonly draw: (y: number) => void
}

export interface PlacedPiece {
  readonly piece: Piece
  readonly y: number
}

/** Puts pieces on pages of `height`, top down; `y` counts from the top of the page's area. */
export function paginate(pieces: readonly Piece[], height: number): readonly (readonly PlacedPiece[])[] {
  const pages: PlacedPiece[][] = [[]]
  let y = 0
  for (const [i, piece] of pieces.entries()) {
    const page = pages[pages.length - 1] ?? []
    const need = Math.min(heightTogether(pieces, i), height)
    if (page.length > 0 && y + piece.before + need > height + 0.01) {
      pages.push([])
      y = 0
    }
    y = place(pages[pages.length - 1] ?? page, piece, y)
  }
  return pages
}

/** Adds the piece (and the head it repeats) and gives where the next one may begin. */
function place(page: PlacedPiece[], piece: Piece, from: number): number {
  let y = page.length === 0 ? 0 : from + piece.before
  if (page.length === 0 && piece.head !== undefined) {
    page.push({ piece: piece.head, y })
    y += piece.head.height
  }
  page.push({ piece, y })
  return y + piece.height
}

/** What must find room below: the piece, its group when it begins one, and what a heading leads. */
function heightTogether(pieces: readonly Piece[], i: number): number {
  const piece = pieces[i]
  if (piece === undefined) return 0
  const next = pieces[i + 1]
  if (piece.leads === true && next !== undefined) return piece.height + next.before + heightTogether(pieces, i + 1)
  return startsGroup(pieces, i) ? groupHeight(pieces, i) : piece.height
}

const startsGroup = (pieces: readonly Piece[], i: number): boolean => {
  const group = pieces[i]?.group
  return group !== undefined && pieces[i - 1]?.group !== group
}

function groupHeight(pieces: readonly Piece[], from: number): number {
  const group = pieces[from]?.group
  let total = 0
  for (const [i, piece] of pieces.slice(from).entries()) {
    if (piece.group !== group) break
    total += piece.height + (i === 0 ? 0 : piece.before)
  }
  return total
}
