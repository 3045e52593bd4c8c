import { join } from 'node:path'
import type { Job } from '../../job/job.ts'
import type { MadePacket } from '../../packet/make-packet.ts'
import { showDayAndYear } from '../../units/day.ts'
import { showMoney } from '../../units/money.ts'
import type { Given } from '../command.ts'
import { EXIT, type ExitCode } from '../exit-code.ts'
import { orderPacket, progressLines } from '../order-packet.ts'
import { packageRoot } from '../package-root.ts'
import { readInput } from '../read-input.ts'
import type { Surroundings } from '../surroundings.ts'

/** The invented job. */
export const demoJob = (around: Surroundings): Promise<Job> =>
  readInput(join(packageRoot(), 'demo', 'alcoves-inch', 'job.json'), around)

/** `demo`: writes the packet of the invented job and says what is in it, for whom, and the job's headline numbers. */
export async function demo({ out = 'nichework-demo.zip' }: Given, around: Surroundings): Promise<ExitCode> {
  around.say(
    'Planning an invented job: two crooked alcoves beside a fireplace. People, addresses and prices are made up.',
  )
  const job = await demoJob(around)
  const made = await orderPacket(job, out, around, progressLines(around))
  around.print(summary(made).join('\n'))
  return EXIT.done
}

function summary({ path, files, plan }: MadePacket): readonly string[] {
  return [
    '',
    `The packet is ${path}`,
    ...FOLDERS.flatMap(({ folder, says }) => {
      const inside = files.filter((file) => (folder === '' ? !file.includes('/') : file.startsWith(folder)))
      return inside.length === 0 ? [] : ['', `  ${says}`, ...inside.map((file) => `    ${file}`)]
    }),
    '',
    `  Boxes ${plan.boxes.boxes.length} · shelves ${plan.shelves.shelves.length} · sheets ${plan.panels.layouts.length}`,
    `  Finished ${showDayAndYear(plan.calendar.finish)} · price ${showMoney(plan.price.total)} ${plan.show.currency} (invented prices)`,
    '',
    'Start with start-here.pdf. To plan a job of your own: npm start',
  ]
}

const FOLDERS: readonly { readonly folder: string; readonly says: string }[] = [
  { folder: '', says: 'for you: where to start, the job itself (opens again here), the list of files' },
  { folder: 'helper/', says: 'for who cuts and installs: no prices, no client but the address' },
  { folder: 'suppliers/', says: 'for outside shops: one request each, nothing of the client' },
  { folder: 'office/', says: 'for you: what to buy and what it costs' },
  { folder: 'client/', says: 'for the client' },
]
