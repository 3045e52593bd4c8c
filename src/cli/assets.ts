import { readdir, readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import type { Assets } from '../documents/document.ts'
import { errorCode } from '../ports/files.ts'
import { packageRoot } from './package-root.ts'

/** Fonts and template texts. A text of the person's own, under the same name in the data folder, wins. */
export async function loadAssets(folder: string): Promise<Assets> {
  const [regular, bold, ours, own] = await Promise.all([
    font('DejaVuSans.ttf'),
    font('DejaVuSans-Bold.ttf'),
    texts(join(packageRoot(), 'templates')),
    texts(join(folder, 'templates')),
  ])
  return { fonts: { regular, bold }, templates: { ...ours, ...own } }
}

const font = (name: string): Promise<Uint8Array> =>
  readFile(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}`))

async function texts(folder: string): Promise<Readonly<Record<string, string>>> {
  const names = await readdir(folder).catch((error: unknown) => {
    if (errorCode(error) === 'ENOENT') return []
    throw error
  })
  const markdown = names.filter((name) => name.endsWith('.md')).sort()
  return Object.fromEntries(
    await Promise.all(markdown.map(async (name) => [name, await readFile(join(folder, name), 'utf8')] as const)),
  )
}
