import { describe, expect, it } from 'vitest'
import { lineText } from '../../src/screens/frame.ts'
import { decodeKeys } from '../../src/screens/keys/decode-keys.ts'
import { startProgram } from '../../src/screens/program.ts'
import type { ProgramPorts } from '../../src/screens/running.ts'
import { type Scene, sceneFrame } from '../../src/screens/scene.ts'
import { InputUnreadable } from '../../src/things/failure.ts'
import { day } from '../../src/units/day.ts'
import { memoryStore } from './memory-store.ts'

const LOOK = { signs: 'unicode', colour: false } as const
const screen = (scene: Scene) => sceneFrame(scene, { columns: 80, rows: 24 }, LOOK).map(lineText).join('\n')
const own = { 'filler.nominal': { inch: '1 1/4 in', because: 'our walls' } }
const broken = async () => {
  throw new InputUnreadable('own-figures.json', ['line 2, saw.kerf: this is not a length.'])
}

const portsWith = (ownFigures: ProgramPorts['ownFigures'], store = memoryStore()) => ({
  store,
  today: day('2026-11-12'),
  newId: () => 'job-0001',
  show: () => undefined,
  window: () => ({ size: { columns: 80, rows: 24 }, look: LOOK }),
  drawn: async () => undefined,
  writePacket: async () => {
    throw new Error('nothing is packed here')
  },
  ownFigures,
})

async function typed(ports: ProgramPorts, bytes: string) {
  const program = await startProgram(ports, undefined)
  program.press(decodeKeys(bytes, 'that is all').keys)
  await program.idle()
  return program
}

describe('figures of the person’s own in the interview', () => {
  it('are stamped into a job as it is begun, and kept with it', async () => {
    const ports = portsWith(async () => own)
    await typed(ports, '\rLarkspur\r')
    expect(ports.store.saves.at(-1)?.job.figures).toEqual(own)
  })

  it('that cannot be read stop no job that was begun before, and are said', async () => {
    const ports = portsWith(async () => own)
    await typed(ports, '\rLarkspur\r')
    const program = await typed(portsWith(broken, ports.store), '\r')
    expect(program.scene().kind).toBe('interview')
    expect(screen(program.scene())).toContain('own-figures.json: line 2, saw.kerf')
    expect(ports.store.saves.at(-1)?.job.figures).toEqual(own)
  })

  it('that cannot be read begin no job: the list of jobs says why', async () => {
    const ports = portsWith(broken)
    const program = await typed(ports, '\r')
    expect(program.scene().kind).toBe('home')
    expect(screen(program.scene())).toContain('own-figures.json: line 2, saw.kerf')
    expect(ports.store.saves).toEqual([])
  })
})
