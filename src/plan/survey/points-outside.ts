import { floor, studs } from '../../job/chapters/wall.ts'
import { devices } from '../../job/chapters/wall-devices.ts'
import { type Field, questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import { type Length, sum } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { RunnableWall } from './survey.ts'
import { surveyOutside } from './survey-messages.ts'

/** Readings taken along the wall that lie beyond its right end: studs, floor points, devices. One question each. */
export function pointsOutside({ figures, show }: PlanContext, wall: RunnableWall): readonly Message[] {
  if (wall.waits.widths.length > 0) return []
  // A leaning wall is wider higher up by no more than the lean that is asked about.
  const end = sum(wall.width, figures.length('survey.lean-most'))
  const beyond = (what: string, field: Pick<Field, 'id'>, places: readonly Length[]): readonly Message[] => {
    const [first] = places.filter((x) => x > end)
    if (first === undefined) return []
    const values = {
      what: `${what} of the ${wall.bay.name}`,
      is: `${show.withUnit(first)} from the left end`,
      usual: `within its width, ${show.withUnit(wall.width)}`,
    }
    return [raise(surveyOutside, { about: questionKey(wall.bay.id, field), place: wall.bay.name }, values)]
  }
  return [
    ...beyond('A stud', studs, wall.fixing.kind === 'studs' ? wall.fixing.centres : []),
    ...beyond(
      'A floor point',
      floor,
      wall.floor.map((k) => k.at),
    ),
    ...beyond(
      'A device',
      devices,
      wall.devices.filter((d) => d.wall === 'back').map((d) => sum(d.x, d.width)),
    ),
  ]
}
