import * as z from 'zod'
import type { StorePorts } from './store-ports.ts'

/** Who holds a job open. */
const lockSchema = z.object({ pid: z.int(), host: z.string(), boot: z.string(), since: z.string() })
export type LockHolder = z.infer<typeof lockSchema>

const LOCK_MOST_BYTES = 4096
export const LOCK_NAME = 'open-here.lock'

/**
 * Takes the courtesy lock of a job's folder. Says who holds it when another running window does; undefined when it is
 * ours now. It only warns: nothing is lost without it, because each save is a new file.
 */
export async function takeLock(ports: StorePorts, folder: string): Promise<LockHolder | undefined> {
  const { files, machine, clock } = ports
  const path = `${folder}/${LOCK_NAME}`
  const holder = await holderAt(ports, path)
  if (holder !== undefined && isOurs(ports, holder)) return undefined
  if (holder !== undefined && !isStale(ports, holder)) return holder
  try {
    if (holder !== undefined) await files.remove(path)
    const file = await files.openNew(path)
    const mine: LockHolder = { pid: machine.pid, host: machine.host, boot: machine.boot, since: clock.minute() }
    await file.writeAll(Buffer.from(JSON.stringify(mine))).finally(() => file.close())
  } catch {
    // A lock is a courtesy: a disk that refuses it will refuse the save too, and that one is reported.
  }
  return undefined
}

async function holderAt({ files }: StorePorts, path: string): Promise<LockHolder | undefined> {
  try {
    const text = Buffer.from(await files.read(path, LOCK_MOST_BYTES)).toString('utf8')
    return lockSchema.parse(JSON.parse(text))
  } catch (error) {
    return isMissing(error) ? undefined : NOBODY
  }
}

/** A lock nobody can read was cut off while it was written: its writer is gone. */
const NOBODY: LockHolder = { pid: 0, host: '', boot: '', since: '' }
const isMissing = (error: unknown): boolean => error instanceof Error && 'code' in error && error.code === 'ENOENT'

const isOurs = ({ machine }: StorePorts, holder: LockHolder): boolean =>
  holder.pid === machine.pid && holder.host === machine.host && holder.boot === machine.boot

/** Stale when the computer was started again or the process is gone. Age alone says nothing: laptops sleep. */
function isStale({ machine }: StorePorts, holder: LockHolder): boolean {
  if (holder.pid === 0) return true
  // What runs on another computer cannot be asked from here: believe its lock.
  if (holder.host !== machine.host) return false
  return holder.boot !== machine.boot || !machine.runs(holder.pid)
}
