import type { Drawing } from '../../geometry/drawing.ts'
import { scaleOfDrawing } from '../../geometry/scale.ts'
import type { HelperLayout, HelperPart } from '../audience-fields.ts'
import { type Block, type Fact, fact, factOf, type Paper, type Section, warned } from '../block.ts'
import { cutInShop, cutOutWords } from '../cut-out-words.ts'
import type { Assets, PacketDocument } from '../document.ts'
import { type ForHelper, forHelper } from '../for-helper.ts'
import { HOLD, isHeld } from '../held.ts'
import { markRanges } from '../mark-ranges.ts'
import { rolesUsed } from '../mark-words.ts'
import { paperSize, unitWord } from '../paper-size.ts'
import { words } from '../words/template.ts'
import { drawingArea } from '../write/page-look.ts'
import { writePdf } from '../write/pdf.ts'
import { cutOutDrawing, cutOutLetter, lies } from './cut-out-drawing.ts'
import { elevation } from './elevation.ts'
import { layoutDrawing } from './layout-drawing.ts'
import { sawTable } from './saw-table.ts'
import { sectionShelves, shelfSection } from './shelf-section.ts'

/** What is built, to scale: the wall from the room, sheets as they are sawn, sections, cut-outs. */
export const drawings: PacketDocument = {
  id: 'drawings',
  reader: 'helper',
  says: 'drawings and panel layouts',
  needed: (plan) => plan.survey.walls.length > 0,
  write: async (plan, assets, stamp) => {
    const paper = drawingsPaper(forHelper(plan), assets)
    return [{ path: 'helper/drawings.pdf', bytes: await writePdf(paper, assets, stamp) }]
  },
}

/** One drawing a page, its scale in the line under the title. */
export function drawingsPaper(view: ForHelper, assets: Assets): Paper {
  const front = elevation(view)
  return {
    name: 'drawings',
    job: view.title,
    size: paperSize(view.show.units),
    sections: [
      ...(front === undefined ? [] : [drawn('Front elevation', front, view, 'landscape'), keyPage(view, assets)]),
      ...view.layouts.map((layout) => layoutPage(layout, view)),
      ...stickPages(view),
      ...sectionShelves(view).map((s) =>
        drawn(`Shelf ${s.mark} and its cleat, section`, shelfSection(s, view), view, 'landscape'),
      ),
      ...cutAlike(view).map((parts) => cutOutPage(parts, view)),
    ],
  }
}

type Turned = Section['turned']

function drawn(
  title: string,
  drawing: Drawing,
  view: ForHelper,
  turned: Turned,
  after: readonly Block[] = [],
): Section {
  const scale = scaleOfDrawing(drawing, roomFor(turned, after), view.show.units)
  return {
    turned,
    title,
    under: `${view.title} · scale ${scale.says} · sizes in ${unitWord(view.show.units)}; do not measure the paper`,
    blocks: [{ kind: 'drawing', drawing, scale }, ...after],
  }
}

/** Half of an upright page, or most of one, is left for what stands under the drawing. */
const UNDER_DRAWING = 45
function roomFor(turned: Turned, after: readonly Block[]): { readonly width: number; readonly height: number } {
  const area = drawingArea(turned)
  return { width: area.width, height: area.height - (after.length === 0 ? 0 : UNDER_DRAWING) }
}

function keyPage(view: ForHelper, assets: Assets): Section {
  const roles = rolesUsed(view.parts.map((part) => part.mark))
  return {
    turned: 'upright',
    title: 'How to read the marks',
    under: view.title,
    blocks: [
      ...words('drawings-note.md', assets.templates, { unit: unitWord(view.show.units) }),
      ...view.bays.map((bay) => fact(bay.letter, bay.name)),
      ...roles.map(({ letter, says }) => fact(letter, says)),
    ],
  }
}

/** The sheet and its saw order on one upright page: the order goes on in a second column before it needs a second page. */
function layoutPage(layout: HelperLayout, view: ForHelper): Section {
  const { show } = view
  const title = `Sheet ${layout.number} of ${view.layouts.length} · ${layout.material.name}`
  const page = drawn(title, layoutDrawing(layout, show), view, 'upright', layoutBlocks(layout, view))
  const hold = layout.state === 'hold' ? 'assumed sizes, do not saw · ' : ''
  return { ...page, under: `${hold}one sheet ${show.mass(layout.mass)} · ${page.under}` }
}

/** The saw order to tick, or HOLD with the marks that wait. */
function layoutBlocks(layout: HelperLayout, { show }: ForHelper): readonly Block[] {
  if (layout.state === 'hold') {
    const marks = markRanges(layout.laid.map((laid) => laid.part.mark))
    return [warned(HOLD, `Not to be sawn yet: ${marks} wait for a measurement.`)]
  }
  const keep = layout.keep.map((k) => `${show.length(k.length)} × ${show.length(k.width)}`)
  return [
    fact('saw order', `Each cut takes ${show.length(layout.kerf)}. Write the mark on the piece before the next cut.`),
    sawTable(layout.lines),
    ...factOf('keep', keep.length === 0 ? [] : [keep.join(' · ')]),
  ]
}

function stickPages(view: ForHelper): readonly Section[] {
  if (view.sticks.length === 0) return []
  const { show } = view
  const blocks = view.sticks.flatMap((stick): readonly Block[] => [
    { kind: 'heading', text: stick.material.name },
    ...stick.bars.map((bar, i): Fact => {
      const { ready, held } = barPieces(bar, show)
      const left = held.length > 0 ? [] : [`left over ${show.length(bar.left)}`]
      const says = [ready.join(' · '), ...left].filter((words) => words !== '').join('; ')
      return { ...fact(`bar ${i + 1}`, ...[says, held.join(' · ')].filter((words) => words !== '')), tick: true }
    }),
  ])
  return [{ turned: 'upright', title: 'Sticks', under: `${view.title} · sizes in ${unitWord(show.units)}`, blocks }]
}

type Bar = ForHelper['sticks'][number]['bars'][number]

/** What can be sawn from a bar, with its size; what cannot yet, without. */
const barPieces = ({ pieces }: Bar, show: ForHelper['show']) => ({
  ready: pieces.filter(({ part }) => !isHeld(part)).map(({ part, length }) => `${part.mark} ${show.length(length)}`),
  held: pieces.filter(({ part }) => isHeld(part)).map(({ part }) => `${part.mark} ${HOLD}`),
})

const WIRED = /outlet|switch|socket/
const TESTED_DEAD = 'Power off and tested dead by the electrician before the panel is near the wires.'

/** Pieces with the same size, seen from the same side, and the same cut-outs share a page. */
function cutAlike(view: ForHelper): readonly (readonly [HelperPart, ...HelperPart[]])[] {
  const alike = new Map<string, readonly [HelperPart, ...HelperPart[]]>()
  for (const part of view.parts.filter((p) => p.cutOuts.length > 0)) {
    const { dx, dy, dz } = part.placement
    const key = JSON.stringify([dx, dy, dz, part.cutOuts, isHeld(part)])
    const [first, ...others] = alike.get(key) ?? [part]
    alike.set(key, first === part ? [part] : [first, ...others, part])
  }
  return [...alike.values()]
}

function cutOutPage(parts: readonly [HelperPart, ...HelperPart[]], view: ForHelper): Section {
  const [part] = parts
  const marks = markRanges(parts.map((p) => p.mark))
  const onSite = part.cutOuts.some((cut) => !cutInShop(cut))
  const after = [
    ...(isHeld(part)
      ? [warned(HOLD, `Not to be cut yet: ${marks} waits for a measurement; drawn at an assumed size.`)]
      : part.cutOuts.map((cut, i) => fact(`cut-out ${cutOutLetter(i)}`, `${cutOutWords(cut, view.show)}.`))),
    ...(part.cutOuts.some((cut) => WIRED.test(cut.what)) ? [warned('caution', TESTED_DEAD)] : []),
    fact(
      'check',
      onSite
        ? 'Measure again from the level line before cutting.'
        : 'Cut in the workshop, before anything is put together.',
    ),
  ]
  return drawn(
    `Cut-outs in ${marks}, seen from ${lies(part) ? 'above' : 'the front'}`,
    cutOutDrawing(part, view.show),
    view,
    'upright',
    after,
  )
}
