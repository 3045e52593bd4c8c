import { readdirSync, readFileSync } from 'node:fs'
import type { Assets, Stamp } from '../../src/documents/document.ts'
import { day } from '../../src/units/day.ts'

const root = new URL('../../', import.meta.url)
const bytes = (path: string) => new Uint8Array(readFileSync(new URL(path, root)))

/** The real templates and fonts, read from the project. */
export const ASSETS: Assets = {
  fonts: {
    regular: bytes('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
    bold: bytes('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'),
  },
  templates: Object.fromEntries(
    readdirSync(new URL('templates/', root)).map((name) => [
      name,
      readFileSync(new URL(`templates/${name}`, root), 'utf8'),
    ]),
  ),
}

export const STAMP: Stamp = { revision: 1, date: day('2026-11-20'), tool: 'nichework 0.1.0' }
