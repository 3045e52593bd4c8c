import { join } from 'node:path'
import type { OwnFigures } from '../figures/own-figures.ts'
import { JOB_MOST_BYTES } from '../job/open.ts'
import { openOwnFigures } from '../job/open-own-figures.ts'
import { errorCode } from '../ports/files.ts'
import { nodeFiles } from '../ports/node/files.ts'
import { dataFolder } from './data-folder.ts'
import type { Surroundings } from './surroundings.ts'

const OWN_FIGURES = 'own-figures.json'

/** Where a person's own figures stand: in the data folder. */
export const ownFiguresPath = async (around: Surroundings): Promise<string> =>
  join((await dataFolder(around)).folder, OWN_FIGURES)

/** The person's own figures; none when there is no such file. Throws InputUnreadable with every fault and its line. */
export async function readOwnFigures(around: Surroundings): Promise<OwnFigures> {
  const path = await ownFiguresPath(around)
  const bytes = await nodeFiles.read(path, JOB_MOST_BYTES).catch((error: unknown) => {
    if (errorCode(error) === 'ENOENT') return undefined
    throw error
  })
  return bytes === undefined ? {} : openOwnFigures(bytes, path)
}
