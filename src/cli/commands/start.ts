import { createStore } from '../../archive/store.ts'
import type { Job } from '../../job/job.ts'
import { nodeClock } from '../../ports/node/clock.ts'
import { nodeFiles } from '../../ports/node/files.ts'
import { nodeMachine } from '../../ports/node/machine.ts'
import { nodeRandomId } from '../../ports/node/random-id.ts'
import { NoTerminal } from '../../things/failure.ts'
import { dataFolder } from '../data-folder.ts'
import type { Surroundings } from '../surroundings.ts'
import { TOOL } from '../version.ts'

const JOB_ID_LETTERS = 10

/** The interview. What makes plans and packets is loaded when it is asked for. Throws NoTerminal when there is nobody to ask. */
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
    ownFigures: async () => (await import('../own-figures.ts')).readOwnFigures(around),
    demoJob: async () => (await import('./demo.ts')).demoJob(around),
    writePacket: async (job, onProgress) => {
      const { orderPacket } = await import('../order-packet.ts')
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

/** In the folder the program was started in; from the job's id and revision, never from a client's name. */
const packetName = (job: Job): string => `nichework-${job.id}-r${job.issued.length + 1}-office.zip`
