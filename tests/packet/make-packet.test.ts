import { createHash } from 'node:crypto'
import { unzipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { PacketHeld } from '../../src/packet/allowed.ts'
import { withIssue } from '../../src/packet/issue.ts'
import { packPlan } from '../../src/packet/make-packet.ts'
import { openPacket } from '../../src/packet/open-packet.ts'
import { changesSince, issuedParts } from '../../src/plan/compare/compare.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { DiskProblem, TemplateBroken } from '../../src/things/failure.ts'
import { messageKind, raise } from '../../src/things/message.ts'
import { day } from '../../src/units/day.ts'
import { inchPlan } from '../documents/fixture.ts'
import { disksAfterCrash } from '../ports/crash.ts'
import { EMPTY_DISK, memoryFiles, type Operation, systemError } from '../ports/memory-files.ts'
import { packed, paper, smallOrder } from './fixture.ts'

const PATH = '/data/packet.zip'

async function written(change: Parameters<typeof smallOrder>[1] = {}) {
  const files = memoryFiles()
  const made = await packed(smallOrder(files, change))
  return { files, made, bytes: files.disk().files.get(PATH) ?? new Uint8Array() }
}

describe('writing a packet', () => {
  it('puts every document, the job and the manifest into one zip, as another reader sees it', async () => {
    const { bytes, made } = await written()
    const entries = unzipSync(bytes)
    expect(Object.keys(entries)).toEqual(['client/quote.txt', 'helper/cut-list.txt', 'job.json', 'manifest.json'])
    expect(made.files.toSorted()).toEqual(Object.keys(entries))
    const manifest = JSON.parse(Buffer.from(entries['manifest.json'] ?? []).toString())
    expect(manifest).toMatchObject({
      format: 'nichework-packet',
      schema: 1,
      tool: 'nichework test',
      revision: 1,
      date: '2026-11-26',
    })
    for (const { path, bytes: length, sha256 } of manifest.files) {
      expect(entries[path]?.length).toBe(length)
      expect(
        createHash('sha256')
          .update(entries[path] ?? '')
          .digest('hex'),
      ).toBe(sha256)
    }
  })

  it('opens again with this issue noted, so that the next one is revision 2', async () => {
    const { bytes, made } = await written()
    const { job, notes } = await openPacket(bytes, 'packet.zip')
    expect(notes).toEqual([])
    expect(job).toEqual(made.job)
    const again = await written({ job })
    expect(again.made.job.issued.map((issue) => issue.revision)).toEqual([1, 2])
  })

  it('gives the same bytes for the same job and date, whatever the time zone', async () => {
    const before = process.env.TZ
    const hashes = []
    for (const zone of ['UTC', 'Pacific/Auckland', 'America/St_Johns']) {
      process.env.TZ = zone
      hashes.push(Buffer.from((await written()).bytes).toString('base64'))
    }
    if (before === undefined) delete process.env.TZ
    else process.env.TZ = before
    expect(new Set(hashes).size).toBe(1)
  })

  it('leaves nothing behind but the packet', async () => {
    const { files } = await written()
    expect([...files.disk().files.keys()]).toEqual([PATH])
  })

  it('tells which document it is at', async () => {
    const said: string[] = []
    await written({ onProgress: ({ says, number, of }) => said.push(`${number}/${of} ${says}`) })
    expect(said).toEqual(['1/2 helper/cut-list.txt', '2/2 client/quote.txt'])
  })

  it('refuses names that are not plain, and two documents of one name', async () => {
    for (const path of ['../x.pdf', 'helper/con.pdf', 'Helper/a.pdf', 'a/b/c/d.pdf']) {
      await expect(written({ documents: [paper(path, '')] }), path).rejects.toThrow('A packet holds no file named')
    }
    await expect(written({ documents: [paper('a.pdf', ''), paper('a.pdf', '')] })).rejects.toThrow(
      'Two documents write a.pdf',
    )
  })
})

describe('a packet is whole or absent', () => {
  const old = Buffer.from('the packet of last week')
  const start = { ...EMPTY_DISK, files: new Map([[PATH, old]]) }

  it('after a power cut at any moment: the old one byte for byte, or a new one that verifies', async () => {
    const files = memoryFiles(start)
    await packed(smallOrder(files))
    const whole = files.disk().files.get(PATH)
    let states = 0
    for (let count = 0; count <= files.operations.length; count++) {
      for (const disk of disksAfterCrash(start, files.operations, count)) {
        states++
        const found = disk.files.get(PATH)
        expect(found === old || Buffer.from(found ?? []).equals(Buffer.from(whole ?? [])), `cut after ${count}`).toBe(
          true,
        )
      }
    }
    expect(states).toBeGreaterThan(40)
  })

  const kinds: readonly Operation['kind'][] = ['open', 'write', 'flush', 'close', 'rename']
  it.each(kinds)('when the disk refuses: %s', async (kind) => {
    for (const code of ['ENOSPC', 'EROFS', 'EIO', 'EACCES']) {
      const files = memoryFiles(start, (operation) => (operation.kind === kind ? systemError(code) : undefined))
      await expect(packed(smallOrder(files))).rejects.toThrow(DiskProblem)
      expect([...files.disk().files]).toEqual([[PATH, old]])
    }
  })

  it('when the bytes on disk are not those that were meant', async () => {
    const files = memoryFiles(start)
    const lying = {
      ...files,
      read: async (path: string, atMost: number) =>
        (await files.read(path, atMost)).map((byte, index) => (index === 60 ? byte ^ 1 : byte)),
    }
    await expect(packed(smallOrder(lying))).rejects.toThrow(DiskProblem)
    expect([...files.disk().files]).toEqual([[PATH, old]])
  })
})

describe('a packet that must not be written', () => {
  const held = messageKind({
    code: 'test-held',
    weight: 'confirm',
    source: 'test',
    says: () => ({ short: 'short', why: '', todo: '' }),
  })

  it('is refused with what holds it, and nothing is written', async () => {
    const files = memoryFiles()
    const order = smallOrder(files)
    const messages = [raise(held, { about: 'a.widths', place: 'alcove' }, { gap: 1 })]
    await expect(packPlan({ ...makePlan(order.job, 'quick'), messages }, order)).rejects.toThrow(PacketHeld)
    expect(files.operations).toEqual([])
  })

  it('names a broken text before any document is made, and nothing is written', async () => {
    const files = memoryFiles()
    const begun: string[] = []
    const { assets } = smallOrder(files)
    const broken = { ...assets, templates: { ...assets.templates, 'care.md': 'Keep it dry, {{ clinet }}' } }
    const order = smallOrder(files, { assets: broken, onProgress: ({ says }) => begun.push(says) })
    await expect(packed(order)).rejects.toThrow(TemplateBroken)
    expect(begun).toEqual([])
    expect(files.operations).toEqual([])
  })
})

describe('what a packet remembers of its parts', () => {
  it('is what the next one compares with: nothing changed when nothing did', () => {
    const plan = inchPlan()
    const job = withIssue(plan, { revision: 1, date: day('2026-11-26'), tool: 'test' })
    const [issue] = job.issued
    if (issue === undefined) throw new Error('no issue was noted')
    expect(issue.parts).toEqual(issuedParts(plan))
    expect(Object.keys(issue.parts).length).toBeGreaterThan(50)
    expect(changesSince(issue, plan)).toEqual([])
  })
})
