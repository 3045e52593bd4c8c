import { strFromU8, unzipSync } from 'fflate'

export interface RawCell {
  readonly at: string
  readonly formula: string | undefined
  readonly value: string | undefined
}

/** Cells of each sheet straight from the XML: shared strings resolved, formula and cached value side by side. */
export function rawSheets(bytes: Uint8Array): ReadonlyMap<string, ReadonlyMap<string, RawCell>> {
  const files = unzipSync(bytes)
  const text = (name: string) => strFromU8(files[name] ?? new Uint8Array())
  const strings = [...text('xl/sharedStrings.xml').matchAll(/<si>([\s\S]*?)<\/si>/g)].map((m) =>
    plainXml([...(m[1] ?? '').matchAll(/<t[^>]*>([\s\S]*?)<\/t>/g)].map((t) => t[1]).join('')),
  )
  const names = [...text('xl/workbook.xml').matchAll(/<sheet [^>]*name="([^"]*)"/g)].map((m) => m[1] ?? '')
  return new Map(names.map((name, i) => [name, cellsOf(text(`xl/worksheets/sheet${i + 1}.xml`), strings)]))
}

function cellsOf(xml: string, strings: readonly string[]): ReadonlyMap<string, RawCell> {
  const cells = new Map<string, RawCell>()
  for (const [, attributes = '', inner = ''] of xml.matchAll(/<c ([^>]*?)(?:\/>|>([\s\S]*?)<\/c>)/g)) {
    const at = /r="([A-Z]+\d+)"/.exec(attributes)?.[1] ?? ''
    const formula = /<f>([\s\S]*?)<\/f>/.exec(inner)?.[1]
    const raw = /<v>([\s\S]*?)<\/v>/.exec(inner)?.[1]
    const value = /t="s"/.test(attributes) && raw !== undefined ? strings[Number(raw)] : raw
    cells.set(at, { at, formula: formula === undefined ? undefined : plainXml(formula), value })
  }
  return cells
}

const plainXml = (text: string): string =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&')
