import { readFile } from 'node:fs/promises'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import readSheets from 'read-excel-file/node'
import { loadAssets } from '../../src/cli/assets.ts'
import { planJson } from '../../src/cli/plan-json.ts'
import type { PacketFile, Stamp } from '../../src/documents/document.ts'
import { DOCUMENTS } from '../../src/documents/list.ts'
import type { Job } from '../../src/job/job.ts'
import { openJob } from '../../src/job/open.ts'
import { packetContents } from '../../src/packet/contents.ts'
import { withIssue } from '../../src/packet/issue.ts'
import { zipOf } from '../../src/packet/zip.ts'
import { panels } from '../../src/plan/panels/panels.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import { settings } from '../../src/plan/settings.ts'
import { settleFrom } from '../../src/plan/settle.ts'
import { day } from '../../src/units/day.ts'
import { bundledHello, helloStart, interviewStart } from './first-frame.ts'
import { type Amount, plainPacket } from './plain-packet.ts'
import { repeated } from './repeated.ts'

// How fast it is, as ratios to an anchor measured in the same run: `npm run bench`. Times alone say more of the machine than of the program.

const median = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0

async function timed(work: () => unknown): Promise<number> {
  const start = performance.now()
  await work()
  return performance.now() - start
}

/** Medians of two things measured in turn, so that a slow moment of the machine meets both. */
async function inTurn(
  times: number,
  ours: () => Promise<number>,
  anchor: () => Promise<number>,
): Promise<readonly [number, number]> {
  const results: [number, number][] = []
  for (let run = 0; run < times; run++) results.push([await ours(), await anchor()])
  return [median(results.map(([time]) => time)), median(results.map(([, time]) => time))]
}

function report(what: string, [ours, anchor]: readonly [number, number], anchorSays: string, aim: number): void {
  const ratio = ours / anchor
  console.log(
    `${what}: ${ours.toFixed(1)} ms · ${anchorSays}: ${anchor.toFixed(1)} ms · ratio ${ratio.toFixed(2)} (aim ≤ ${aim}) ${ratio <= aim ? 'holds' : 'MISSED'}`,
  )
}

const job: Job = openJob(await readFile(new URL('../../demo/alcoves-inch/job.json', import.meta.url)), 'demo')

async function benchStart(): Promise<void> {
  const hello = await bundledHello()
  report(
    'First frame of the interview',
    await inTurn(9, interviewStart, () => helloStart(hello)),
    'bare Ink program',
    1.5,
  )
}

/** The panels step alone, on the parts of a plan that is made. */
function panelsAgain(plan: Plan): unknown {
  const settle = settleFrom(job)
  const { cut, show } = settings(settle)
  return panels({ job, bays: plan.bays, figures: plan.figures, cut, show, settle }, plan.parts, 'quick')
}

/** The plan less its layouts: the time of a plan, less that of the panels step alone. */
async function benchPlan(): Promise<void> {
  const text = JSON.stringify(planJson(makePlan(job, 'quick')))
  const bare = { ...JSON.parse(text), layouts: [], sticks: [] }
  const whole = () => timed(() => makePlan(job, 'quick'))
  const plan = makePlan(job, 'quick')
  const layouts = () => timed(() => panelsAgain(plan))
  for (let warm = 0; warm < 20; warm++) makePlan(job, 'quick')
  const [planned, laid] = await inTurn(31, whole, layouts)
  const [anchor] = await inTurn(
    31,
    () => timed(() => JSON.parse(JSON.stringify(bare))),
    async () => 0,
  )
  const bareTime = planned - laid
  report('Plan of the demo job without layouts', [bareTime, anchor], 'writing and reading it as JSON', 3)
  console.log(`The same in time: ${bareTime.toFixed(1)} ms (aim ≤ 10 ms) ${bareTime <= 10 ? 'holds' : 'MISSED'}`)
  report('The same with sheets laid as after each answer', [planned, anchor], 'writing and reading it as JSON', 5)
}

const COPIES = 16

/** Plans a wall with the demo's bays over and over, against the demo's own wall: time must grow with the bays, not with their square. */
async function benchBays(): Promise<void> {
  const [one, many] = [repeated(job, 1), repeated(job, COPIES)]
  for (let warm = 0; warm < 5; warm++) makePlan(many, 'quick')
  const times = await inTurn(
    9,
    () => timed(() => makePlan(many, 'quick')),
    () => timed(() => makePlan(one, 'quick')),
  )
  report(`${COPIES} times the bays`, times, 'the demo’s bays once', 20)
}

async function benchPacket(): Promise<void> {
  const assets = await loadAssets('')
  const plan = makePlan(job, 'thorough')
  const stamp: Stamp = { revision: 1, date: day('2026-11-25'), tool: 'nichework bench' }
  const write = () =>
    packetContents({
      plan,
      job: withIssue(plan, stamp),
      stamp,
      assets,
      documents: DOCUMENTS,
      onProgress: () => undefined,
    })
  const amount = await amountOf(await write())
  const ours = () => timed(async () => zipOf(await write(), stamp.date))
  const times = await inTurn(5, ours, () => timed(() => plainPacket(amount, assets)))
  const sum = (counts: readonly number[]) => counts.reduce((total, count) => total + count, 0)
  report(
    'Packet of the demo job',
    times,
    `its libraries writing ${sum(amount.pages)} plain pages and ${sum(amount.rows)} rows`,
    3,
  )
  const whole = await timed(async () =>
    zipOf(
      await packetContents({
        plan: makePlan(job, 'thorough'),
        job,
        stamp,
        assets,
        documents: DOCUMENTS,
        onProgress: () => undefined,
      }),
      stamp.date,
    ),
  )
  console.log(
    `Plan and packet together: ${(whole / 1000).toFixed(2)} s (aim ≤ 3 s) ${whole <= 3000 ? 'holds' : 'MISSED'}`,
  )
}

async function amountOf(files: readonly PacketFile[]): Promise<Amount> {
  const pages: number[] = []
  const rows: number[] = []
  for (const { path, bytes } of files) {
    if (path.endsWith('.pdf'))
      pages.push((await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise).numPages)
    if (path.endsWith('.xlsx')) {
      const sheets = await readSheets(Buffer.from(bytes))
      rows.push(sheets.reduce((total, sheet) => total + sheet.data.length, 0))
    }
  }
  return { pages, rows }
}

await benchPlan()
await benchBays()
await benchPacket()
await benchStart()
process.exit()
