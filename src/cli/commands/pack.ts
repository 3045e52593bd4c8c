import { resolve } from 'node:path'
import { WrongUse } from '../../things/failure.ts'
import type { Given } from '../command.ts'
import { EXIT, type ExitCode } from '../exit-code.ts'
import { orderPacket, progressLines } from '../order-packet.ts'
import { readJob } from '../read-input.ts'
import type { Surroundings } from '../surroundings.ts'

/** `pack JOB --out FILE.zip`: writes the packet, and prints where it is. */
export async function pack(given: Given, around: Surroundings): Promise<ExitCode> {
  const {
    files: [name = '-'],
    out = '',
  } = given
  if (name !== '-' && resolve(name) === resolve(out)) {
    throw new WrongUse(`--out is the job itself (${out}), which is never written to. Give the packet another name.`)
  }
  const job = await readJob(given, around)
  const made = await orderPacket(job, out, around, progressLines(around))
  const revision = made.job.issued.length
  around.say(
    `Revision ${revision} is written: ${made.files.length} files. It is the office's copy and holds prices; hand each reader only their own folder.`,
  )
  around.print(made.path)
  return EXIT.done
}
