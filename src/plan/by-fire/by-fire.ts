import { boxDepth } from '../../job/chapters/cabinets.ts'
import { shelfDepth } from '../../job/chapters/shelves.ts'
import { type Field, type QuestionKey, questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { Part, PartId } from '../../things/part.ts'
import { longest, ZERO } from '../../units/length.ts'
import type { BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { MantelPlan } from '../mantel/mantel.ts'
import type { Survey } from '../survey/survey.ts'
import { woodBesideBreast } from './beside-breast.ts'
import { besideBreastMessages } from './beside-breast-messages.ts'
import { type BesideFire, besideFires } from './beside-fire.ts'
import { fireBesideNotMeasured } from './by-fire-messages.ts'
import { inHearthZone } from './in-hearth-zone.ts'
import { type StandingOut, standingOut } from './standing-out.ts'
import { woodTooNear } from './wood-too-near.ts'

/** What the step leans on: everything of wood that is built, and the fires of the wall. */
export interface WoodAndFires {
  readonly survey: Survey
  readonly boxes: BoxPlan
  readonly mantel: MantelPlan
  readonly parts: readonly Part[]
}

/** The parts, those that stand out beside a fire waiting for what is not known of it; and what a fire stops there. */
export function woodByFire(
  context: PlanContext,
  { survey, boxes, mantel, parts }: WoodAndFires,
): { readonly parts: readonly Part[]; readonly messages: readonly Message[] } {
  const fires = besideFires(survey, mantel.hearths)
  const found = fires.map((here) => {
    const out = standingOut(here, parts)
    const box = boxes.boxes.find((b) => b.run.bay.id === here.beside.bay.id)
    const run = box === undefined ? [] : inHearthZone(context, here, { run: box.run, depth: box.depth, out })
    const near = woodTooNear(context, here, { run: box?.run, depth: box?.depth ?? ZERO, out })
    return {
      waiting: waitingFor(here, parts, out),
      messages: [
        ...run,
        ...near,
        ...notMeasured(context, here, { out, field: box === undefined ? shelfDepth : boxDepth }),
      ],
    }
  })
  return {
    parts: found.reduce((all, { waiting }) => all.map((part) => waitingToo(part, waiting)), parts),
    messages: [
      ...strictest(found.flatMap(({ messages }) => messages)),
      ...besideBreastMessages(
        context,
        fires.map((here) => ({ here, found: woodBesideBreast(context, here, parts) })),
      ),
    ],
  }
}

/** A bay between two fires is asked once: by the fire that leaves it the least depth, so that its way out clears both. */
function strictest(messages: readonly Message[]): readonly Message[] {
  const same = (a: Message, b: Message) =>
    a.weight === 'stop' && a.code === b.code && a.about === b.about && a.place === b.place
  const left = (m: Message): number => {
    const depth = m.fixes[0]?.answers[0]?.value
    return typeof depth === 'number' ? depth : 0
  }
  return messages.filter((m, i) =>
    messages.every(
      (other, j) => i === j || !same(m, other) || left(m) < left(other) || (left(m) === left(other) && i < j),
    ),
  )
}

interface Waiting {
  readonly ids: ReadonlySet<PartId>
  readonly keys: readonly QuestionKey[]
}

/** How far a breast stands out of a flat wall is not known by any return: until it is measured all wood beside it waits. */
function waitingFor(
  { breast, fire, beside }: BesideFire,
  parts: readonly Part[],
  out: readonly StandingOut[],
): Waiting {
  const unknownFace = beside.kind === 'flat' && breast.waits.depth.length > 0
  const waiting = unknownFace ? parts.filter((part) => part.bay === beside.bay.id) : out.map((o) => o.part)
  return { ids: new Set(waiting.map((part) => part.id)), keys: [...fire.waitsFor, ...breast.waits.depth] }
}

const waitingToo = (part: Part, { ids, keys }: Waiting): Part =>
  keys.length > 0 && ids.has(part.id) ? { ...part, waitsFor: [...new Set([...part.waitsFor, ...keys])] } : part

function notMeasured(
  { show }: PlanContext,
  here: BesideFire,
  { out, field }: { readonly out: readonly StandingOut[]; readonly field: Pick<Field, 'id'> },
): readonly Message[] {
  const { breast, fire, beside } = here
  if (out.length === 0 || fire.waitsFor.length + breast.waits.depth.length === 0) return []
  const where = { about: questionKey(beside.bay.id, field), place: beside.bay.name }
  const by = longest(ZERO, ...out.map((o) => o.seen.standsOut))
  return [raise(fireBesideNotMeasured, where, { by: show.withUnit(by) })]
}
