import { homedir } from 'node:os'
import { isAbsolute, join, resolve } from 'node:path'
import type { Surroundings } from './surroundings.ts'

export interface DataFolder {
  readonly folder: string
  /** What was passed over, in words. */
  readonly notes: readonly string[]
}

/** Where jobs and own templates live: NICHEWORK_HOME, else the system's folder for data (XDG Base Directory on Linux). */
export async function dataFolder({ env }: Pick<Surroundings, 'env'>): Promise<DataFolder> {
  const own = env.NICHEWORK_HOME
  if (own !== undefined && own !== '') return { folder: resolve(own), notes: [] }
  if (process.platform === 'win32' || process.platform === 'darwin') {
    const { default: envPaths } = await import('env-paths')
    return { folder: envPaths('nichework', { suffix: '' }).data, notes: [] }
  }
  const shared = env.XDG_DATA_HOME ?? ''
  if (isAbsolute(shared)) return { folder: join(shared, 'nichework'), notes: [] }
  const notes = shared === '' ? [] : [`XDG_DATA_HOME is not a full path ("${shared}") and is passed over.`]
  return { folder: join(homedir(), '.local', 'share', 'nichework'), notes }
}
