import { nodeFiles } from '../ports/node/files.ts'
import { nodeRandomId } from '../ports/node/random-id.ts'
import { writeNew } from '../ports/write-new.ts'
import { dataFolder } from './data-folder.ts'
import type { Surroundings } from './surroundings.ts'
import { TOOL } from './version.ts'

/** Keeps the details of a fault of the program in a file, without any answer in it, and says where. */
export async function noteFault(error: unknown, around: Surroundings): Promise<string> {
  const start = 'Something went wrong in nichework. Your answers are saved at each question.'
  const details = detailsOf(error)
  try {
    const folder = `${(await dataFolder(around)).folder}/faults`
    const path = `${folder}/fault-${nodeRandomId(8)}.txt`
    await nodeFiles.makeFolder(folder)
    await writeNew({
      files: nodeFiles,
      folder,
      temporary: `.${nodeRandomId(8)}`,
      target: path,
      bytes: Buffer.from(details),
    })
    return `${start} The details are in ${path}.`
  } catch {
    return `${start} The details:\n${details}`
  }
}

/** Name of the error and the places in the program; its words may hold an answer and are left out. */
function detailsOf(error: unknown): string {
  const name = error instanceof Error ? error.name : typeof error
  const places = error instanceof Error ? (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line)) : []
  return [TOOL, `node ${process.version}`, name, ...places, ''].join('\n')
}
