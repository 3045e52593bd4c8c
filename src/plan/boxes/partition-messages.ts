import { type PartitionRow, partitions } from '../../job/chapters/box-inside.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { hasDrawers } from '../fronts/drawer-choice.ts'
import { type PlacedPartition, partitionRows, placesOf } from './box-inside.ts'
import { partitionHasNoRoom } from './box-messages.ts'
import type { RunOfBoxes } from './boxes.ts'

/** Partitions that are not built: in a box that is not there or has drawers, or too near to a neighbour. */
export function partitionMessages(context: PlanContext, built: RunOfBoxes): readonly Message[] {
  const rows = partitionRows(context, built.run)
  const { boxes, make } = built
  if (rows.length === 0 || boxes.length === 0) return []
  const homeless = rows.filter((row) => boxes.every((b) => b.number !== row.box))
  const tight = boxes.flatMap((box): readonly Pick<PlacedPartition, 'row' | 'nearest'>[] => {
    const own = rows.filter((row) => row.box === box.number)
    if (hasDrawers(context, box)) return own.map((row) => ({ row, nearest: undefined }))
    return KINDS.flatMap((what) =>
      placesOf(context, { ...box, carcass: make.carcass }, own, what).filter((p) => !p.fits),
    )
  })
  return [
    ...homeless.map((row) => message(context, built, row, undefined)),
    ...tight.map(({ row, nearest }) => message(context, built, row, nearest)),
  ]
}

const KINDS = ['divider', 'fixed-shelf'] as const

function message(context: PlanContext, { run }: RunOfBoxes, row: PartitionRow, nearest: Length | undefined): Message {
  const { show, figures } = context
  const key = questionKey(run.bay.id, partitions)
  const rows = partitionRows(context, run)
  const without = rows.filter((other) => other !== row)
  const moved = rows.map((other) => (other === row ? { ...row, at: nearest } : other))
  const words = nearest === undefined ? undefined : `its middle at ${show.withUnit(nearest)}`
  const fixes = [
    ...(words === undefined ? [] : [{ says: words, answers: [{ key, value: moved }] }]),
    { says: 'leave it out', answers: [{ key, value: without }] },
  ]
  const values = {
    what: row.what === 'divider' ? 'divider' : 'fixed shelf',
    box: String(row.box),
    room: show.withUnit(figures.length('box.opening-least')),
    todo: words === undefined ? 'Leave it out, or put it into another box.' : `Put ${words}, or leave it out.`,
  }
  return raise(partitionHasNoRoom, { about: key, place: run.bay.name, fixes }, values)
}
