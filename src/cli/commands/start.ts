import { join } from 'node:path'
import { createStore } from '../../archive/store.ts'
import type { Job } from '../../job/job.ts'
import { openJob } from '../../job/open.ts'
import { nodeClock } from '../../ports/node/clock.ts'
import { nodeFiles } from '../../ports/node/files.ts'
import { nodeMachine } from '../../ports/node/machine.ts'
import { nodeRandomId } from '../../ports/node/random-id.ts'
import { NoTerminal } from '../../things/failure.ts'
import { dataFolder } from '../data-folder.ts'
import { orderPacket } from '../order-packet.ts'
import { packageRoot } from '../package-root.ts'
import type { Surroundings } from '../surroundings.ts'
import { TOOL } from '../version.ts'
import { DEMO_JOB } from './demo.ts'

const JOB_ID_LETTERS = 10
const DEMO_MOST_BYTES = 1024 * 1024

/** The interview. Throws NoTerminal when there is nobody to ask. */
export async function start(around: Surroundings): Promise<number> {
  const { env, stdin, stdout } = around
  if (!stdin.isTTY || !stdout.isTTY) throw new NoTerminal(NO_TERMINAL)
  stdout.write(`${TOOL}: opening your jobs …\n`)
  const { folder, notes } = await dataFolder(around)
  for (const note of notes) around.say(`note: ${note}`)
  clearSigns()
  const { runInterview } = await import('../../screens/run.tsx')
  return runInterview({
    store: createStore({ files: nodeFiles, clock: nodeClock, randomId: nodeRandomId, machine: nodeMachine() }, folder),
    today: nodeClock.today(),
    newId: () => nodeRandomId(JOB_ID_LETTERS),
    env,
    stdin,
    stdout,
    demoJob: await demoJob(),
    writePacket: async (job, onProgress) => {
      const made = await orderPacket(job, packetName(job), around, ({ says, number, of }) =>
        onProgress(`${number} of ${of}: ${says}`),
      )
      return { path: made.path, files: made.files.length, job: made.job }
    },
  })
}

const NO_TERMINAL = `The interview needs a terminal for its keys and its screen, and this is not one.
Without it, write the answers into a file and run: nichework pack FILE.json --out PACKET.zip
To see a packet first: nichework demo`

/** The screens would stay blank where a build server is suspected; whether somebody is there has been decided above. */
function clearSigns(): void {
  delete process.env.CI
  delete process.env.CONTINUOUS_INTEGRATION
}

async function demoJob(): Promise<Job> {
  const path = join(packageRoot(), DEMO_JOB)
  return openJob(await nodeFiles.read(path, DEMO_MOST_BYTES), path)
}

/** In the folder the program was started in; from the job's id and revision, never from a client's name. */
const packetName = (job: Job): string => `nichework-${job.id}-r${job.issued.length + 1}-office.zip`
