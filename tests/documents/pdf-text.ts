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
