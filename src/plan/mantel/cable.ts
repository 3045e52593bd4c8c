import { type FaceRectangle, rightOf } from '../../geometry/face-rectangle.ts'
import { cable, cableTo } from '../../job/chapters/firebox.ts'
import { questionKey } from '../../things/field.ts'
import { formula } from '../../things/formula.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { CutOut } from '../../things/part.ts'
import { type Length, less, longest, over, sum, times, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import type { Firebox } from './firebox.ts'
import type { MantelBeam } from './mantel-size.ts'
import { blockCount, firstBlock, ledgerLength } from './mantel-sums.ts'

/** The way a screen's cable takes: its holes in the mantel, the side it leaves by, and its set-out in words. */
export interface CableRoute {
  readonly way: 'through-mantel' | 'surface-duct' | 'breast-void' | 'none'
  readonly to: 'breast' | 'left' | 'right'
  /** Through every layer of the top, and through one end. */
  readonly holes: { readonly top: readonly CutOut[]; readonly end: readonly CutOut[] }
  readonly says: readonly string[]
  readonly messages: readonly Message[]
}

export const NO_CABLE: CableRoute = { way: 'none', to: 'breast', holes: { top: [], end: [] }, says: [], messages: [] }

export const cableHoleTight = messageKind<{ hole: string; where: string; short: string }>({
  code: 'C8',
  weight: 'confirm',
  source: 'common practice, no source',
  says: (v) => ({
    short: `A ${v.hole} hole does not fit inside the mantel ${v.where}: ${v.short} short.`,
    why: 'It would cut the ledger, a block or the soffit, or leave too little wood round it.',
    todo: 'Run the cable in a duct on the face, or make the mantel larger by that much.',
  }),
})

export const cableInFlue = messageKind<Record<string, never>>({
  code: 'S26',
  weight: 'stop',
  source: 'common practice, no source; local code and licensed practice govern',
  says: () => ({
    short: 'The cable would run down inside masonry that holds a flue.',
    why: 'A flue is never opened or chased, and the masonry round it grows hot enough to melt a cable.',
    todo: 'Run it in a duct on the face, or through the mantel. Mains only by a licensed electrician.',
  }),
})

interface On {
  readonly fire: Firebox
  readonly mantel: MantelBeam | undefined
  readonly screen: FaceRectangle
}

/** Chooses the cable's way, its holes, and what does not fit. Low voltage only. */
export function cableRoute(context: PlanContext, wall: BreastWall, on: On): CableRoute {
  const { settle } = context
  const { bay } = wall
  const { mantel } = on
  const tight = mantel === undefined ? undefined : tightest(context, mantel)
  const way = settle.choice(cable, bay, () =>
    mantel === undefined || tight !== undefined
      ? { value: 'surface-duct' as const, because: 'there is no room inside a mantel' }
      : { value: 'through-mantel' as const, because: 'nothing to see from the room' },
  )
  const to = settle.choice(cableTo, bay, () => ({ value: 'breast' as const, because: 'no hole in a box unasked' }))
  const inside = way === 'through-mantel' && mantel !== undefined
  return {
    way,
    to,
    holes: inside && tight === undefined ? holesIn(context, mantel, to) : NO_CABLE.holes,
    says:
      inside && tight === undefined ? throughWords(context, wall, mantel, on.screen, to) : ductWords(context, wall, on),
    messages: [
      ...(inside && tight !== undefined ? [tightHole(context, wall, tight)] : []),
      ...(way === 'breast-void' && on.fire.masonry.hot ? [inFlue(wall)] : []),
    ],
  }
}

interface Room {
  readonly where: string
  readonly is: Length
}

/** Room for the hole inside the beam: before the ledger, over the soffit, and between the end and the first block. */
const roomsIn = (context: PlanContext, mantel: MantelBeam): readonly Room[] => [
  {
    where: 'between ledger and frieze',
    is: less(mantel.beamDepth, mantel.panel, context.figures.length('mantel.ledger-thick')),
  },
  { where: 'over its soffit', is: less(mantel.frieze, mantel.panel) },
  { where: 'between its end and the first block', is: endCell(context, mantel) },
]

interface Tight {
  readonly where: string
  readonly short: Length
}

/** Where the hole and the wood round it have least room, and what is missing there; undefined when they fit. */
function tightest(context: PlanContext, mantel: MantelBeam): Tight | undefined {
  const { figures } = context
  const needed = sum(figures.length('cable.hole'), times(figures.length('cable.edge'), 2))
  const [worst] = roomsIn(context, mantel)
    .map(({ where, is }) => ({ where, short: less(needed, is) }))
    .toSorted((a, b) => b.short - a.short)
  return worst === undefined || worst.short <= 0 ? undefined : worst
}

/** From the inside of the beam's end to the first block. */
function endCell({ figures, cut }: PlanContext, mantel: MantelBeam): Length {
  const ledgerEase = figures.length('mantel.ledger-ease')
  const along = ledgerLength({ beamLength: mantel.beamLength, mantelThickness: mantel.panel, ledgerEase, cut })
  const blocks = blockCount({
    ledgerLength: longest(along, ZERO),
    blockPitch: figures.length('mantel.block-pitch'),
  })
  const first = firstBlock({ ledgerLength: longest(along, ZERO), blocks })
  return less(sum(over(ledgerEase, 2), first), over(figures.length('mantel.ledger-thick'), 2))
}

/** Left edge of a hole in the middle of a space that starts somewhere. */
const holeInMiddle = formula(
  {
    id: 'cable.hole-start',
    plain: 'start of the space + (space − hole) / 2, on the nearest mark',
    source: 'common practice, no source',
    from: { hole: { id: 'cable.hole' } },
    units: { start: 'length', space: 'length' },
  },
  (of: { readonly start: Length; readonly space: Length; readonly hole: Length; readonly cut: CutStep }): Length =>
    of.cut.near(sum(of.start, over(less(of.space, of.hole), 2))),
)

/** From the back edge: behind the hole stay the ledger and the wood round it. */
const holeFromBack = formula(
  {
    id: 'cable.hole-from-back',
    plain: 'ledger + wood round a hole, on the nearest mark',
    source: 'common practice, no source',
    from: { edge: { id: 'cable.edge' } },
  },
  (of: { readonly ledgerThick: Length; readonly edge: Length; readonly cut: CutStep }): Length =>
    of.cut.near(sum(of.ledgerThick, of.edge)),
)

/** Through the top between one end and the first block, and through that end: the side the cable leaves by, else the left. */
function holesIn(context: PlanContext, mantel: MantelBeam, to: CableRoute['to']): CableRoute['holes'] {
  const { figures, cut } = context
  const hole = figures.length('cable.hole')
  const back = holeFromBack({
    ledgerThick: figures.length('mantel.ledger-thick'),
    edge: figures.length('cable.edge'),
    cut,
  })
  const space = endCell(context, mantel)
  const inner = sum(less(mantel.beamX, mantel.x), mantel.panel)
  const start = to === 'right' ? less(mantel.length, inner, space) : inner
  const up = holeInMiddle({ start: mantel.panel, space: less(mantel.frieze, mantel.panel), hole, cut })
  return {
    top: [
      {
        what: 'round cable hole, from the back edge',
        x: holeInMiddle({ start, space, hole, cut }),
        z: back,
        width: hole,
        height: hole,
      },
    ],
    end: [{ what: 'round cable hole, from the back edge', x: back, z: up, width: hole, height: hole }],
  }
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

function throughWords(
  { show }: PlanContext,
  wall: BreastWall,
  mantel: MantelBeam,
  screen: FaceRectangle,
  to: CableRoute['to'],
): readonly string[] {
  const side = to === 'right' ? 'right' : 'left'
  const drop = longest(ZERO, less(screen.z, mantel.top))
  return [
    `${wall.bay.name}, cable: ${show.withUnit(drop)} down from the screen, through the mantel top at its ${side} end, out of that end.`,
    ...onward(wall, to),
  ]
}

function ductWords({ show }: PlanContext, wall: BreastWall, { mantel, screen }: On): readonly string[] {
  const drop = longest(ZERO, less(screen.z, mantel?.top ?? ZERO))
  const across = longest(screen.x, less(wall.width, rightOf(screen)))
  return [
    `${capital(wall.bay.name)}, cable: duct on the face, ${show.withUnit(drop)} down from the screen${mantel === undefined ? '' : ' to the mantel'}, or ${show.withUnit(across)} across to the breast’s edge.`,
  ]
}

const onward = (wall: BreastWall, to: CableRoute['to']): readonly string[] =>
  to === 'breast'
    ? []
    : [
        `${wall.bay.name}, cable: from the mantel’s end in a duct to the breast’s ${to} edge, down to the counter, through counter and box top.`,
      ]

function tightHole({ show, figures }: PlanContext, { bay }: BreastWall, { where, short }: Tight): Message {
  const about = questionKey(bay.id, cable)
  return raise(
    cableHoleTight,
    {
      about,
      place: bay.name,
      fixes: [{ says: 'a duct on the face', answers: [{ key: about, value: 'surface-duct' }] }],
    },
    { hole: show.withUnit(figures.length('cable.hole')), where, short: show.withUnit(short) },
  )
}

function inFlue({ bay }: BreastWall): Message {
  const about = questionKey(bay.id, cable)
  const fixes = [{ says: 'a duct on the face', answers: [{ key: about, value: 'surface-duct' }] }]
  return raise(cableInFlue, { about, place: bay.name, fixes }, {})
}
