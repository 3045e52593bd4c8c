import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { DOCUMENTS } from '../src/documents/list.ts'
import { publishedRows } from '../src/figures/published.ts'
import { FIELDS, fieldById } from '../src/job/fields.ts'

const ROOT = fileURLToPath(new URL('..', import.meta.url))
const read = (path: string): string => readFileSync(join(ROOT, path), 'utf8')
const filesUnder = (folder: string): readonly string[] =>
  readdirSync(join(ROOT, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(ROOT.length))
    .sort()

const SOURCES = filesUnder('src').filter((path) => /\.(ts|tsx|mjs)$/.test(path))
const PURE = /^src\/(units|geometry|things|figures|kinds|job|plan|interview)\//
const LAYERS = [
  'units',
  'geometry',
  'things',
  'figures',
  'kinds',
  'job',
  'plan',
  'interview',
  'documents',
  'packet',
  'archive',
  'screens',
  'cli',
]
const withoutComments = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|[^:])\/\/.*$/gm, '$1')

describe('the shape of the tree', () => {
  it('has the agreed names at its top, and tool settings only as far as the tools want them there', () => {
    const tracked = execFileSync('git', ['ls-tree', '--name-only', 'HEAD'], { cwd: ROOT, encoding: 'utf8' })
      .trim()
      .split('\n')
    const allowed =
      /^(\..*|README\.md|DEVELOPERS\.md|package\.json|package-lock\.json|tsconfig\.json|biome\.json|vitest\.config\.ts|src|templates|tests|demo|shared)$/
    expect(tracked.filter((name) => !allowed.test(name))).toEqual([])
  })

  it('has layers with known names', () => {
    expect(readdirSync(join(ROOT, 'src')).filter((name) => ![...LAYERS, 'ports', 'build'].includes(name))).toEqual([])
  })

  it.each(SOURCES)('%s is at most 300 lines', (path) => {
    expect(read(path).split('\n').length).toBeLessThanOrEqual(300)
  })

  it('has no drawer for odds and ends, and no barrel', () => {
    const names = SOURCES.map((path) => path.split('/').at(-1) ?? '')
    expect(names.filter((name) => /^(utils?|helpers?|common|core|manager|index|misc)\./.test(name))).toEqual([])
    expect(SOURCES.filter((path) => /\/(utils?|helpers?|common|core|managers?)\//.test(path))).toEqual([])
    expect(SOURCES.filter((path) => /^export \* from/m.test(read(path)))).toEqual([])
  })
})

describe('the pure layers', () => {
  it.each(SOURCES.filter((path) => PURE.test(path)))('%s asks neither clock nor chance nor system', (path) => {
    const code = withoutComments(read(path))
    expect(code).not.toMatch(
      /from 'node:|\bDate\.now\b|\bnew Date\b|\bMath\.random\b|\bprocess\.|\bsetTimeout\b|\bsetInterval\b|\blocaleCompare\b|\btoLocale|\bIntl\.(?!Segmenter)/,
    )
  })
})

describe('imports', () => {
  const imports = new Map(
    SOURCES.map((path) => [
      path,
      [...read(path).matchAll(/^(import|export)(?<typeOnly> type)?\b[^;]*?from '(?<from>\.[^']+)'/gms)].map(
        (match) => ({
          to: join(path, '..', match.groups?.from ?? ''),
          typeOnly: match.groups?.typeOnly !== undefined,
        }),
      ),
    ]),
  )

  it('go from a layer only to those on its left', () => {
    const wrong = [...imports].flatMap(([path, list]) =>
      list
        .filter(({ to }) => {
          const [from, target] = [path, to].map((file) => LAYERS.indexOf(file.split('/')[1] ?? ''))
          return from !== undefined && target !== undefined && from >= 0 && target > from
        })
        .map(({ to }) => `${path} → ${to}`),
    )
    expect(imports.size).toBeGreaterThan(100)
    expect(wrong).toEqual([])
  })

  it('make no circle when the program runs', () => {
    const circles: string[] = []
    const finished = new Set<string>()
    const visit = (path: string, above: readonly string[]): void => {
      if (above.includes(path)) circles.push([...above.slice(above.indexOf(path)), path].join(' → '))
      else if (!finished.has(path)) {
        for (const { to, typeOnly } of imports.get(path) ?? []) if (!typeOnly) visit(to, [...above, path])
        finished.add(path)
      }
    }
    for (const path of SOURCES) visit(path, [])
    expect(circles).toEqual([])
  })

  it('name files that exist', () => {
    const missing = [...imports.values()].flat().filter(({ to }) => !existsSync(join(ROOT, to)))
    expect(missing.map(({ to }) => to)).toEqual([])
  })
})

describe('figures', () => {
  const rows = publishedRows()
  const code = SOURCES.map(read).join('\n')
  const named = [...code.matchAll(/(?:figures|figuresIn\([^)]*\))\.(?:length|number|row)\(\s*'([^']+)'/g)].map(
    (match) => match[1] ?? '',
  )

  it('that the code names are all in shared/figures', () => {
    expect(named.length).toBeGreaterThan(20)
    expect(named.filter((id) => !rows.has(id))).toEqual([])
  })

  it('of shared/figures are all used', () => {
    // An id may be built from its family and a kind: `rate.${work}` uses every row of that family.
    const families = [...code.matchAll(/`([a-z-]+\.[a-z0-9.-]*)\$\{/g)].map((match) => match[1] ?? '')
    const unused = [...rows.keys()].filter(
      (id) => !code.includes(`'${id}'`) && !families.some((family) => id.startsWith(family)),
    )
    expect(unused).toEqual([])
  })

  it('each say where they come from', () => {
    for (const row of rows.values()) {
      if (row.known === 'read') expect(row.source, row.id).not.toContain('no source')
    }
  })
})

const familiesOfKinds = (): readonly string[] =>
  readdirSync(join(ROOT, 'src/kinds'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)

describe('lists that drive the program', () => {
  it('hold every document that has a folder, each once', () => {
    const folders = readdirSync(join(ROOT, 'src/documents'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name)
    const withDocument = folders.filter((folder) =>
      filesUnder(`src/documents/${folder}`).some((path) => /:\s*PacketDocument\b/.test(read(path))),
    )
    const list = read('src/documents/list.ts')
    expect(withDocument.filter((folder) => !list.includes(`'./${folder}/`))).toEqual([])
    expect(new Set(DOCUMENTS.map((document) => document.id)).size).toBe(DOCUMENTS.length)
  })

  it('hold every kind that has a file', () => {
    for (const family of familiesOfKinds()) {
      const list = read(`src/kinds/${family}/list.ts`)
      // Kinds that are rows of figures and words only stand in the list itself.
      if (/satisfies Readonly<Record<string, \w*Kind>>/.test(list)) continue
      // A kind is the one constant its file exports, with the family's contract as its type.
      const kinds = readdirSync(join(ROOT, 'src/kinds', family)).filter((name) => {
        const text = read(`src/kinds/${family}/${name}`)
        return /^export const \w+: \w*Kind\b|satisfies \w*Kind\b/m.test(text) && !/^(list|contract)\.ts$/.test(name)
      })
      expect(kinds.length, `${family}: kinds found`).toBeGreaterThan(0)
      expect(
        kinds.filter((name) => !list.includes(`'./${name}'`)),
        family,
      ).toEqual([])
    }
  })

  it('hold every question once', () => {
    expect(new Set(FIELDS.map((field) => field.id)).size).toBe(FIELDS.length)
    for (const field of FIELDS) expect(fieldById(field.id)).toBe(field)
  })
})

describe('DEVELOPERS.md', () => {
  it('names only files that exist', () => {
    const named = [...read('DEVELOPERS.md').matchAll(/`((?:src|tests|templates|shared|demo)\/[A-Za-z0-9./_-]+)`/g)].map(
      (match) => match[1] ?? '',
    )
    expect(named.length).toBeGreaterThan(10)
    expect(named.filter((path) => !existsSync(join(ROOT, path)))).toEqual([])
  })
})

describe('tests', () => {
  it('are all switched on', () => {
    const off = filesUnder('tests').filter(
      (path) =>
        /\.test\.tsx?$/.test(path) &&
        /\b(it|test|describe)\.(only|skip|todo|fails)\b/.test(
          withoutComments(read(path)).replace(/\/[^/\n]+\/[a-z]*\.test/g, ''),
        ),
    )
    expect(off.filter((path) => path !== 'tests/architecture.test.ts')).toEqual([])
  })
})
