import { lightMount, lightProfile, lights } from '../../job/chapters/lights.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import type { CutOut, Part } from '../../things/part.ts'
import { type Length, less, over, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { LightMake } from './light.ts'
import { LIGHT_CUT } from './light-cuts.ts'
import { grooveTooDeep } from './light-messages.ts'
import { woodLeft } from './light-sums.ts'

/** The panel a profile is let into or fixed on. */
export interface HostPanel {
  readonly part: Part
  /** Which piece and face, in words. */
  readonly which: string
  readonly where: string
  readonly strip: Length
  /** Centre line from the front edge. */
  readonly fromFront: Length
}

export const aboutLights = (place: string, part?: string) => ({
  about: questionKey('job', lights),
  place,
  ...(part === undefined ? {} : { part }),
})

/** Groove (or line on the face) and cable hole of one profile; a groove that leaves too little wood is stopped. */
export function profileWork(
  context: PlanContext,
  make: LightMake,
  panel: HostPanel,
  cableAt: Length,
): { readonly cutOuts: readonly CutOut[]; readonly details: readonly string[]; readonly messages: readonly Message[] } {
  const { figures, show } = context
  const hole = figures.length('lights.hole')
  const start = over(less(panel.part.length, panel.strip), 2)
  const holeCut: CutOut = {
    what: `${LIGHT_CUT}: cable hole (${panel.which}; heights from the front edge)`,
    x: less(cableAt, over(hole, 2)),
    z: less(panel.fromFront, over(hole, 2)),
    width: hole,
    height: hole,
  }
  const line = `${panel.which}: light profile ${show.length(panel.strip)} long, ${show.length(make.width)} wide, centre ${show.length(panel.fromFront)} from the front edge`
  if (make.mount === 'surface')
    return { cutOuts: [holeCut], details: [`${line}, on the face: screwed, nothing routed.`], messages: [] }
  const groove: CutOut = {
    what: `${LIGHT_CUT}: groove ${show.length(make.depth)} deep (${panel.which}; heights from the front edge)`,
    x: start,
    z: less(panel.fromFront, over(make.width, 2)),
    width: panel.strip,
    height: make.width,
  }
  const details = [`${line}, groove ${show.length(make.depth)} deep.`]
  return { cutOuts: [groove, holeCut], details, messages: tooDeep(context, make, panel) }
}

function tooDeep({ figures, show }: PlanContext, make: LightMake, panel: HostPanel): readonly Message[] {
  const least = figures.length('lights.skin-least')
  const panelThickness = panel.part.thickness
  if (woodLeft({ panelThickness, profileDepth: make.depth }) >= least) return []
  const most = less(panelThickness, least)
  const values = {
    where: panel.where,
    depth: show.withUnit(make.depth),
    panel: show.withUnit(panelThickness),
    least: show.withUnit(least),
    most: show.withUnit(most > 0 ? most : ZERO),
  }
  const about = questionKey('job', lightProfile)
  const thinner: readonly Length[] = [make.width, most]
  const fixes: readonly Fix[] = [
    { says: 'the profile on the face', answers: [{ key: questionKey('job', lightMount), value: 'surface' }] },
    ...(lightProfile.schema.safeParse(thinner).success
      ? [{ says: `a profile ${show.withUnit(most)} deep`, answers: [{ key: about, value: thinner }] }]
      : []),
  ]
  return [raise(grooveTooDeep, { about, place: panel.where, part: panel.part.id, fixes }, values)]
}
