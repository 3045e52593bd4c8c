// Bundles the program into dist/: one small entry, and pieces that are loaded only by the command that needs them.
import { chmod, mkdir, readdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('../../', import.meta.url))
const dist = join(root, 'dist')

/** Ink asks for its developer tools at start; a bundle has no use for them. */
const withoutDevtools = {
  name: 'without-devtools',
  setup(bundle) {
    bundle.onResolve({ filter: /^react-devtools-core$/ }, () => ({ path: 'none', namespace: 'without' }))
    bundle.onLoad({ filter: /.*/, namespace: 'without' }, () => ({
      contents: 'export default { connectToDevTools() {} }',
    }))
  },
}

const { metafile } = await build({
  absWorkingDir: root,
  entryPoints: { cli: 'src/cli/main.ts' },
  outdir: 'dist',
  chunkNames: 'pieces/[name]-[hash]',
  bundle: true,
  splitting: true,
  // Half the text to read at each start; names stay whole, so that a fault's places can be read.
  minifyWhitespace: true,
  minifySyntax: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  jsx: 'automatic',
  define: { 'process.env.NODE_ENV': '"production"' },
  plugins: [withoutDevtools],
  // The format libraries find their own files at run time, so they stay packages.
  external: ['exceljs', 'archiver', 'pdfkit', 'yauzl', 'dejavu-fonts-ttf'],
  banner: {
    js: "import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(import.meta.url);",
  },
  metafile: true,
  logLevel: 'warning',
})
await chmod(join(dist, 'cli.js'), 0o755)
await removeOldPieces(new Set(Object.keys(metafile.outputs)))

/** Pieces of earlier builds; the new ones are in place, so nobody finds the program half built. */
async function removeOldPieces(outputs) {
  await mkdir(join(dist, 'pieces'), { recursive: true })
  for (const name of await readdir(join(dist, 'pieces'))) {
    if (!outputs.has(`dist/pieces/${name}`)) await rm(join(dist, 'pieces', name))
  }
}
