import { resolve } from 'node:path'
import type { OwnFigures } from '../figures/own-figures.ts'
import { isAnswersFile, readAnswers } from '../interview/answers.ts'
import { type Job, withOwnFigures } from '../job/job.ts'
import { jobIn, openJson } from '../job/open.ts'
import type { JsonDocument } from '../job/read-json.ts'
import { looksLikeZip, openPacket } from '../packet/open-packet.ts'
import { PACKET_MOST_BYTES } from '../packet/read-zip.ts'
import { sha256 } from '../packet/sha256.ts'
import { errorCode } from '../ports/files.ts'
import { nodeClock } from '../ports/node/clock.ts'
import { nodeFiles } from '../ports/node/files.ts'
import { InputUnreadable } from '../things/failure.ts'
import type { Given } from './command.ts'
import { readOwnFigures } from './own-figures.ts'
import type { Surroundings } from './surroundings.ts'

/** The job a command is about; with `--own-figures` reckoned with the figures of the folder instead of those it carries. */
export async function readJob({ files: [name = '-'], ownFigures }: Given, around: Surroundings): Promise<Job> {
  const job = await readInput(name, around)
  return ownFigures ? withOwnFigures(job, await readOwnFigures(around)) : job
}

/** The job in a job file, a packet, an answers file, or (`-`) standard input. Throws InputUnreadable or JobTooNew. */
export async function readInput(name: string, around: Surroundings): Promise<Job> {
  const file = name === '-' ? 'standard input' : name
  const bytes = name === '-' ? await readStandardInput(around) : await readFileNamed(name)
  if (looksLikeZip(bytes)) {
    const { job, notes } = await openPacket(bytes, file)
    for (const note of notes) around.say(`note: ${note}`)
    return job
  }
  const document = openJson(bytes, file)
  return isAnswersFile(document.value)
    ? answersJob(document, bytes, { file, figures: await readOwnFigures(around) })
    : jobIn(document, file)
}

const ID_LETTERS = 12

/** An answers file begins a job: it gets the person's own figures, and without an id one from its own bytes, so that the same file gives the same packet. */
function answersJob(
  document: JsonDocument,
  bytes: Uint8Array,
  { file, figures }: { readonly file: string; readonly figures: OwnFigures },
): Job {
  const { job, faults } = readAnswers(document.value, {
    id: sha256(bytes).slice(0, ID_LETTERS),
    today: nodeClock.today(),
    figures,
  })
  if (faults.length > 0)
    throw new InputUnreadable(
      file,
      faults.map((fault) => withLine(fault, document)),
    )
  return job
}

/** A fault begins with the key it is about. */
function withLine(fault: string, { lineAt }: JsonDocument): string {
  const key = /^[^\s:]+/.exec(fault)?.[0] ?? ''
  return `line ${lineAt(['answers', key])}: ${fault}`
}

async function readFileNamed(name: string): Promise<Uint8Array> {
  try {
    return await nodeFiles.read(resolve(name), PACKET_MOST_BYTES)
  } catch (cause) {
    throw new InputUnreadable(name, [REASONS[errorCode(cause) ?? ''] ?? 'this file cannot be read.'], { cause })
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file. Check its name and folder.',
  EISDIR: 'this is a folder; name the job file in it.',
  EACCES: 'this account may not read it.',
  EFBIG: `this is larger than a packet may be (${PACKET_MOST_BYTES} bytes).`,
}

async function readStandardInput({ stdin }: Surroundings): Promise<Uint8Array> {
  const pieces: Buffer[] = []
  let length = 0
  for await (const piece of stdin) {
    const bytes = Buffer.from(piece)
    length += bytes.length
    if (length > PACKET_MOST_BYTES)
      throw new InputUnreadable('standard input', [`there are more than ${PACKET_MOST_BYTES} bytes.`])
    pieces.push(bytes)
  }
  return Buffer.concat(pieces)
}
