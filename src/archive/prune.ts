import type { Files } from '../ports/files.ts'
import { type Day, daysBetween } from '../units/day.ts'
import { type NamedSave, readSaveAt, savesIn } from './job-folder.ts'
import type { SaveHeader } from './save-file.ts'

const KEPT_GENERATIONS = 5
const KEPT_DAYS = 7

/** A job's folder as the store that writes into it knows it. Headers are remembered, since a save never changes. */
export interface Pruning {
  readonly files: Files
  readonly folder: string
  readonly headers: Map<string, SaveHeader>
  readonly newest: string
  /** Number of the save this window opened; 0 for a job begun in it. */
  readonly openedAt: number
}

/**
 * Removes old saves once the newest has been read back and verified. Kept: the last five, the last of each of seven days,
 * and every save made since this window opened the job that nothing was made from: another window's latest.
 */
export async function prune(pruning: Pruning): Promise<void> {
  const { files, folder, newest } = pruning
  const saves = await savesIn(files, folder)
  if (saves.length <= KEPT_GENERATIONS) return
  const last = saves.find((save) => save.name === newest)
  if (last === undefined || typeof (await readSaveAt(files, folder, last)) === 'string') return
  const headers = await headersOf(pruning, saves)
  const kept = keptNames(saves, headers, pruning.openedAt)
  for (const { name } of saves) {
    // A save that could not be read is left where it is: what it holds is not known.
    if (headers.has(name) && !kept.has(name)) await files.remove(`${folder}/${name}`)
  }
}

async function headersOf(
  { files, folder, headers }: Pruning,
  saves: readonly NamedSave[],
): Promise<ReadonlyMap<string, SaveHeader>> {
  for (const named of saves) {
    if (headers.has(named.name)) continue
    const save = await readSaveAt(files, folder, named)
    if (typeof save !== 'string') headers.set(named.name, save.header)
  }
  return headers
}

/** Names to keep. `saves` stand newest first. */
function keptNames(
  saves: readonly NamedSave[],
  headers: ReadonlyMap<string, SaveHeader>,
  openedAt: number,
): ReadonlySet<string> {
  const known = saves.flatMap((save) => {
    const header = headers.get(save.name)
    return header === undefined ? [] : [{ name: save.name, header, day: dayOf(header) }]
  })
  const today = known[0]?.day
  // Headers of removed saves are remembered too, so that a save is not taken for childless because its child is gone.
  const parents = new Set([...headers.values()].map((header) => header.parent))
  const days = new Map<Day, string>()
  for (const { name, day } of known) if (!days.has(day)) days.set(day, name)
  const recent = [...days].filter(([day]) => today !== undefined && Math.abs(daysBetween(day, today)) < KEPT_DAYS)
  return new Set([
    ...known.slice(0, KEPT_GENERATIONS).map((save) => save.name),
    ...recent.map(([, name]) => name),
    ...known.filter(({ header }) => header.number > openedAt && !parents.has(header.id)).map((save) => save.name),
  ])
}

const DAY = 'YYYY-MM-DD'.length
const dayOf = (header: SaveHeader): Day => header.savedAt.slice(0, DAY) as Day
