import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lineText } from '../../src/screens/frame.ts'
import { decodeKeys } from '../../src/screens/keys/decode-keys.ts'
import { startProgram } from '../../src/screens/program.ts'
import type { ProgramPorts } from '../../src/screens/running.ts'
import { type Scene, sceneFrame } from '../../src/screens/scene.ts'
import { day } from '../../src/units/day.ts'
import { memoryStore } from './memory-store.ts'

const LOOK = { signs: 'unicode', colour: false } as const
const screen = (scene: Scene) => sceneFrame(scene, { columns: 80, rows: 24 }, LOOK).map(lineText).join('\n')

function ports(
  store = memoryStore(),
  more: Partial<Omit<ProgramPorts, 'store'>> = {},
): Omit<ProgramPorts, 'store'> & { readonly store: ReturnType<typeof memoryStore> } {
  let ids = 0
  return {
    store,
    today: day('2026-11-12'),
    newId: () => `job-${String(++ids).padStart(4, '0')}`,
    show: () => undefined,
    window: () => ({ size: { columns: 80, rows: 24 }, look: LOOK }),
    drawn: async () => undefined,
    writePacket: async (job) => ({ path: '/out/packet.zip', files: 12, job }),
    ...more,
  }
}

/** Types bytes in pieces of the sizes given, over and over; each piece is a read of its own. */
async function type(
  program: Awaited<ReturnType<typeof startProgram>>,
  bytes: string,
  sizes: readonly number[] = [bytes.length],
) {
  let rest = ''
  let from = 0
  for (let i = 0; from < bytes.length; i++) {
    const size = sizes[i % sizes.length] ?? bytes.length
    const decoded = decodeKeys(rest + bytes.slice(from, from + size), 'more may come')
    rest = decoded.rest
    from += size
    program.press(decoded.keys)
  }
  program.press(decodeKeys(rest, 'that is all').keys)
  await program.idle()
}

/** A new job as far as the widths, with a slip, a correction, Esc and a paste in it. */
const SCRIPT = [
  '\r',
  'Larkspur\r',
  'inchex\u007Fs\r',
  '1/16\r',
  '\u001B[B\r',
  '10 dec\r',
  '1986x\u0017 1931\r',
  'no\r',
  '\u001B',
  '\r\r\r\r\r\r',
  'alcove breast alcove\r',
  '4 41 1/4 41 3/8 0\r',
  '\u001B[200~36 41 41 1/8\r\n84 40 7/8 40 15/16\u001B[201~\r',
  '\r',
  'nm\r',
].join('')

describe('the program', () => {
  it('goes on at the same question after a start anew, with every answer', async () => {
    const p = ports()
    const first = await startProgram(p, undefined)
    await type(first, SCRIPT)
    const again = await startProgram(p, undefined)
    expect(screen(again.scene())).toContain('Larkspur')
    await type(again, '\r')
    expect(screen(again.scene())).toBe(screen(first.scene()))
    expect(p.store.saves.at(-1)?.job.facts.a?.widths).toHaveLength(3)
  })

  it('says in the list of jobs where each stands, in words', async () => {
    const p = ports()
    await type(await startProgram(p, undefined), SCRIPT)
    const again = await startProgram(p, undefined)
    expect(screen(again.scene())).toMatch(/Larkspur {3}Wall, left alcove, \w+/)
    expect(screen(again.scene())).not.toMatch(/squareLeft|[a-z][A-Z]/)
  })

  it('gives the same job from the same keys, sent at once, byte by byte, or at any cuts', async () => {
    const jobOf = async (sizes?: readonly number[]) => {
      const p = ports()
      await type(await startProgram(p, undefined), SCRIPT, sizes)
      return JSON.stringify(p.store.saves.at(-1))
    }
    const whole = await jobOf()
    expect(await jobOf([1])).toBe(whole)
    await fc.assert(
      fc.asyncProperty(fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 6 }), async (sizes) => {
        expect(await jobOf(sizes)).toBe(whole)
      }),
      { numRuns: 4 },
    )
  }, 60_000)

  it('goes on when the disk refuses, says so, and saves everything once it is back', async () => {
    const p = ports()
    const program = await startProgram(p, undefined)
    p.store.full = true
    await type(program, '\rLarkspur\r')
    expect(screen(program.scene())).toContain('not saved yet')
    p.store.full = false
    await type(program, '1\r')
    expect(p.store.saves.at(-1)?.job.facts.job).toEqual({ title: 'Larkspur', units: 'inch' })
    expect(screen(program.scene())).not.toContain('not saved yet')
  })

  it('asks before it leaves with an answer that is not on disk, and leaves on the second Ctrl+C', async () => {
    const p = ports()
    const program = await startProgram(p, undefined)
    p.store.full = true
    await type(program, '\rLarkspur\r\u0003')
    expect(screen(program.scene())).toContain('Ctrl+C again leaves without it')
    await type(program, '\u0003')
    expect((await program.left)?.saved).toBe('not saved yet')
  })

  it('random keys never crash it, every frame fits, and the disk has every accepted answer', async () => {
    const key = fc.constantFrom(
      '\r',
      '\r',
      '\r',
      '\u001B',
      '\u001B[A',
      '\u001B[B',
      '?',
      '1',
      '2',
      'alcove',
      'yes',
      '41 1/4',
      '4 41',
      '\u007F',
      '\t',
      '\u001BOS',
      '\u0015',
    )
    await fc.assert(
      fc.asyncProperty(fc.array(key, { maxLength: 30 }), async (keys) => {
        const frames: string[] = []
        const p = ports(memoryStore(), { show: (scene) => frames.push(screen(scene)) })
        const program = await startProgram(p, undefined)
        await type(program, `\r${keys.join('')}`)
        const scene = program.scene()
        const last = p.store.saves.at(-1)
        if (scene.kind === 'interview' && last?.job.id === scene.session.job.id)
          expect(last.job).toEqual(scene.session.job)
        for (const frame of frames) expect(frame.split('\n').length).toBe(23)
      }),
      { numRuns: 15 },
    )
  }, 60_000)
})
