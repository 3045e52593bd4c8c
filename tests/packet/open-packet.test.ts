import * as fc from 'fast-check'
import { type Zippable, zipSync } from 'fflate'
import { beforeAll, describe, expect, it } from 'vitest'
import { emptyJob } from '../../src/job/job.ts'
import { openPacket } from '../../src/packet/open-packet.ts'
import { JobTooNew, NicheworkError } from '../../src/things/failure.ts'
import { memoryFiles } from '../ports/memory-files.ts'
import { packed, smallOrder } from './fixture.ts'

const JOB = emptyJob('packet-1', '2026-11-25')
const job = Buffer.from(JSON.stringify(JOB))
const zip = (files: Zippable) => zipSync(files, { mtime: '2026-11-25T12:00:00' })
const open = (bytes: Uint8Array) => openPacket(bytes, 'packet.zip')

let ours = new Uint8Array()
beforeAll(async () => {
  const files = memoryFiles()
  await packed(smallOrder(files))
  ours = new Uint8Array(files.disk().files.get('/data/packet.zip') ?? [])
})

const changed = (bytes: Uint8Array, at: number, value: number): Uint8Array =>
  bytes.map((byte, index) => (index === at ? value : byte))
const find = (bytes: Uint8Array, mark: readonly number[], from = 0): number =>
  Buffer.from(bytes).indexOf(Buffer.from(mark), from)
const CENTRAL = [0x50, 0x4b, 0x01, 0x02]
const LOCAL = [0x50, 0x4b, 0x03, 0x04]

describe('opening a packet', () => {
  it('reads one that another program packed, and says that its list of files is missing', async () => {
    const { job: read, notes } = await open(zip({ 'job.json': job }))
    expect(read).toEqual(JOB)
    expect(notes.join()).toContain('manifest.json) is missing')
  })

  it('says when the job was changed since the packet was written', async () => {
    const { unzipSync } = await import('fflate')
    const entries = unzipSync(ours)
    const { notes } = await open(zip({ ...entries, 'job.json': job }))
    expect(notes).toEqual(['Changed since the packet was written: job.json. Check the answers before you use them.'])
  })

  it('names the newer version it needs', async () => {
    await expect(open(zip({ 'job.json': Buffer.from('{"schema": 2}') }))).rejects.toThrow(JobTooNew)
  })

  // Each item: what ISO/IEC 21320-1 and a careful reader refuse. The archives are made by an independent library and bent by hand.
  it.each<[string, () => Uint8Array, string]>([
    ['another zip', () => zip({ 'a.txt': job }), 'this zip has no job.json'],
    ['no zip', () => Buffer.from('PK not a zip at all, not at all'), 'this zip cannot be read'],
    ['cut short', () => ours.subarray(0, ours.length - 40), 'this zip cannot be read'],
    ['names that differ by case only', () => zip({ 'job.json': job, 'JOB.json': job }), 'is in it twice'],
    ['a name that leaves the folder', () => zip({ 'job.json': job, '../x': job }), 'cannot be read'],
    ['a full path', () => zip({ 'job.json': job, '/etc/x': job }), 'cannot be read'],
    ['a backslash', () => zip({ 'job.json': job, 'a\\b': job }), 'cannot be read'],
    ['a name beyond ASCII', () => zip({ 'job.json': job, 'é.txt': job }), 'is not plain'],
    ['a control character in a name', () => zip({ 'job.json': job, 'a\u0007.txt': job }), 'is not plain'],
    ['a link', () => zip({ 'job.json': [job, { os: 3, attrs: 0o120777 << 16 }] }), 'a link or a device'],
    [
      'a job that unpacks to 20 MiB of nothing',
      () => zip({ 'job.json': Buffer.alloc(20 * 1024 * 1024) }),
      'unpacks to more than',
    ],
    [
      'too many files',
      () => zip({ 'job.json': job, ...Object.fromEntries(Array.from({ length: 300 }, (_, n) => [`f${n}`, job])) }),
      'at most 200',
    ],
    ['a password', () => changed(zip({ 'job.json': job }), find(zip({ 'job.json': job }), CENTRAL) + 8, 1), 'password'],
    [
      'a packing method of another kind',
      () => changed(zip({ 'job.json': job }), find(zip({ 'job.json': job }), CENTRAL) + 10, 12),
      'in a way that is not read',
    ],
    [
      'two headers that differ',
      () => changed(zip({ 'job.json': job }), find(zip({ 'job.json': job }), LOCAL) + 30, 'k'.charCodeAt(0)),
      'headers of "job.json" differ',
    ],
    ['something before it', () => Buffer.concat([Buffer.from('#!/bin/sh\n'), zip({ 'job.json': job })]), 'packet.zip'],
    ['something after it', () => Buffer.concat([zip({ 'job.json': job }), Buffer.from('more')]), 'packet.zip'],
    [
      'a wrong check sum',
      () => changed(zip({ 'job.json': job }), find(zip({ 'job.json': job }), CENTRAL) + 16, 0x55),
      'is damaged',
    ],
    ['two entries over the same bytes', overlapping, 'overlaps'],
  ])('refuses with its reason: %s', async (_what, bytes, said) => {
    await expect(open(bytes())).rejects.toThrow(said)
    await expect(open(bytes())).rejects.toBeInstanceOf(NicheworkError)
  })

  it('ends in a job or in planned words, whatever byte of it changes', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(), fc.nat(255), async (at, value) => {
        await open(changed(ours, at % ours.length, value)).catch((error: unknown) =>
          expect(error).toBeInstanceOf(NicheworkError),
        )
      }),
      { numRuns: 1000 },
    )
  })
})

/** The list says of the first entry that it is longer than it is, so that it runs into the second. */
function overlapping(): Uint8Array {
  const bytes = Buffer.from(zip({ 'job.json': job, 'more.json': job }))
  const first = find(bytes, CENTRAL)
  bytes.writeUInt32LE(bytes.readUInt32LE(first + 20) + 50, first + 20)
  return bytes
}
