import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** Text of each page, read by another library than the one that wrote it. */
export async function pdfPages(bytes: Uint8Array): Promise<readonly string[]> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), useSystemFonts: false }).promise
  const pages: string[] = []
  for (let n = 1; n <= pdf.numPages; n += 1) {
    const content = await (await pdf.getPage(n)).getTextContent()
    pages.push(
      content.items
        .map((item) => ('str' in item ? item.str : ''))
        .join(' ')
        .replace(/\s+/g, ' '),
    )
  }
  return pages
}

/** Roles of the structure tree of a page: `Document`, `H1`, `Table` … */
export async function pdfTags(bytes: Uint8Array, page: number): Promise<readonly string[]> {
  const pdf = await getDocument({ data: new Uint8Array(bytes) }).promise
  const roles: string[] = []
  const visit = (node: object | null): void => {
    if (node === null) return
    if ('role' in node) roles.push(String(node.role))
    if ('children' in node && Array.isArray(node.children)) node.children.forEach(visit)
  }
  visit(await (await pdf.getPage(page)).getStructTree())
  return roles
}

export interface TextBox {
  readonly says: string
  readonly left: number
  readonly right: number
  readonly foot: number
  readonly top: number
}

/** Where each piece of text stands on a page, in points from its lower left corner; letters without their tails. */
export async function pdfTextBoxes(bytes: Uint8Array, page: number): Promise<readonly TextBox[]> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), useSystemFonts: false }).promise
  const content = await (await pdf.getPage(page)).getTextContent()
  return content.items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return []
    const [left, foot] = [Number(item.transform[4]), Number(item.transform[5])]
    return [{ says: item.str, left, right: left + item.width, foot, top: foot + item.height * 0.7 }]
  })
}

/** Pairs of texts that stand on one another. */
export const textsThatCollide = (boxes: readonly TextBox[]): readonly string[] =>
  boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left < b.right - 1 && b.left < a.right - 1 && a.foot < b.top - 1 && b.foot < a.top - 1)
      .map((b) => `${a.says} | ${b.says}`),
  )
