import { describe, expect, it } from 'vitest'
import { coatingTable } from '../../../src/figures/coating-table.ts'
import { figuresIn } from '../../../src/figures/figures.ts'
import { type CoatingPlan, coating, type ToCoat } from '../../../src/plan/coating/coating.ts'
import type { Joint } from '../../../src/things/joint.ts'
import { type Area, squareMetres } from '../../../src/units/area.ts'
import { millimetres, ZERO } from '../../../src/units/length.ts'
import { minorUnits } from '../../../src/units/money.ts'
import { contextFor } from '../context-for-test.ts'
import { partOf } from '../part-for-test.ts'

const nothing = { parts: [], joints: [], messages: [] }
const side = partOf({ mm: [1000, 500, 20], quantity: 2, coat: { surface: 'built-in', faces: 2 } })
const skin = partOf({ id: 's', mark: 'L-H1', mm: [1000, 300, 6], coat: { surface: 'built-in', faces: 1 } })
const bare = partOf({ id: 'c', mark: 'L-C1', mm: [900, 38, 30] })
// Only what the step reads of a wall: 1200 wide, ceiling 2400, crown 100.
const alcove = {
  kind: 'alcove',
  bay: { id: 'a' },
  width: millimetres(1200),
  lowestCeiling: millimetres(2400),
  crown: { drop: millimetres(100), projection: ZERO },
}
const joint = (colour: Joint['colour']) => ({ colour, twoColours: true, length: millimetres(2000) }) as unknown as Joint

const work = (given: { sprayedOut?: boolean; painted?: Area } = {}): ToCoat => ({
  survey: { walls: [alcove], messages: [] } as unknown as ToCoat['survey'],
  supply: {
    parts: [side, skin, bare],
    requests: [],
    sprayedOut: given.sprayedOut ?? false,
    delivery: minorUnits(0),
    messages: [],
  },
  fronts: { style: 'slab', leaves: [], drawers: [], drawerMake: undefined, contribution: nothing },
  mantel: {
    breasts: [{ paintedFace: given.painted ?? squareMetres(0) }],
    mantelTop: undefined,
    contribution: nothing,
  } as unknown as ToCoat['mantel'],
  joints: [joint('wall'), joint('built-in')],
})
const planFor = (choices: Readonly<Record<string, unknown>>, given: Parameters<typeof work>[0] = {}) =>
  coating(contextFor('metric', choices), work(given))
const codes = (plan: CoatingPlan) => plan.messages.map((m) => m.code)

describe('coating', () => {
  // Side: 2·1·0.5 + 2·1.5·0.02·2 = 1.12 m², two of them; skin: 0.3 + 2·1.3·0.006·2 = 0.3312 m² (edges drink double, common practice).
  const area = 2 * 1.12 + 0.3312

  it('areas by finished size, faces and double edges', () => {
    const plan = planFor({})
    expect(plan.areas['built-in']).toBeCloseTo(area, 12)
    expect(plan.areas.masonry).toBe(0)
  })

  it('every coat by its wet film, transfer of the gun 0.5 (Products Finishing, low end), residue 0.4 l once', () => {
    const plan = planFor({ builtInSystem: 'water-polyurethane', paintMethod: 'hvlp' })
    const top = plan.lines.find((line) => line.layer === 'top' && line.surface === 'built-in')
    expect(top?.litres).toBeCloseTo((area * 2 * 110) / 1000 / 0.5 + 0.4, 12)
    const sealers = plan.lines.filter((line) => line.layer === 'sealer')
    // Edges: (2·2·1.5·0.02 + 2·1.3·0.006) × 2 = 0.2712 m² twice; hidden face of the skin 0.3 m² once.
    expect(sealers.map((line) => [line.on, line.coats])).toEqual([
      ['edges of MDF', 2],
      ['hidden faces', 1],
    ])
    expect(sealers[0]?.area).toBeCloseTo(0.2712, 12)
    expect(sealers[0]?.litres).toBeCloseTo((0.2712 * 2 * 60) / 1000 / 0.9 + 0.1, 12)
    expect(sealers[1]?.litres).toBeCloseTo((0.3 * 60) / 1000 / 0.9, 12)
  })

  it('wall corner to corner without its tin, by coverage 10 m² a litre; strips where the tin is at hand', () => {
    const whole = planFor({})
    // 1200 × (2400 − 100 − 1000): the side stands from 0 to 1000.
    expect(whole.areas.wall).toBeCloseTo(1.2 * 1.3, 12)
    expect(whole.lines.find((l) => l.surface === 'wall' && l.layer === 'top')?.litres).toBeCloseTo((1.56 * 2) / 10, 12)
    const kept = coating(contextFor('metric', {}, { wallTinKept: true }), work())
    expect(kept.wallTouchUp).toBe('strips')
    expect(kept.areas.wall).toBeCloseTo(2 * 0.1, 12)
  })

  it('a spray shop brings its own paint: areas stay, no line for the built-ins', () => {
    const plan = planFor({ sprayingWay: 'buy' }, { sprayedOut: true })
    expect(plan.where).toBe('spray shop')
    expect(plan.areas['built-in']).toBeCloseTo(area, 12)
    expect(plan.lines.some((line) => line.surface === 'built-in')).toBe(false)
  })

  it('masonry by hand, when it is painted', () => {
    const lines = planFor({}, { painted: squareMetres(3) }).lines.filter((line) => line.surface === 'masonry')
    expect(lines.map((line) => [line.layer, line.area])).toEqual([
      ['primer', 3],
      ['top', 3],
    ])
  })

  it('spraying in the house is asked, with ventilation, masks, flames and sealed rooms', () => {
    const plan = planFor({ paintPlace: 'site', paintMethod: 'hvlp' })
    expect(codes(plan)).toEqual(['C13', 'N14'])
    expect(plan.messages[0]?.todo).toMatch(/fan.*mask.*flame.*sealed/)
    expect(codes(planFor({ paintPlace: 'site', paintMethod: 'hand', builtInSystem: 'water-enamel' }))).toEqual(['N14'])
  })

  it.each(['site', 'shop'])('isocyanates are never sprayed here (%s): a stop', (paintPlace) => {
    expect(codes(planFor({ builtInSystem: 'two-component-polyurethane', paintPlace }))).toContain('S17')
  })

  it('isocyanates at a spray shop are its business', () => {
    const plan = planFor({ builtInSystem: 'two-component-polyurethane', sprayingWay: 'buy' }, { sprayedOut: true })
    expect(codes(plan)).not.toContain('S17')
  })

  it('a coating made for the gun is not brushed: a stop that names the ways it is put on', () => {
    const plan = planFor({ builtInSystem: 'water-polyurethane', paintMethod: 'hand' })
    expect(codes(plan)).toContain('S22')
    expect(plan.messages.find((m) => m.code === 'S22')?.todo).toContain('high-volume low-pressure gun')
  })
})

describe('chip kit (100 ml of each colour: common practice, no source)', () => {
  it('a jar of each top coat that is put on, from the tin', () => {
    const plan = planFor({ builtInSystem: 'water-enamel', builtInColour: 'grey, satin' }, { painted: squareMetres(3) })
    expect(plan.chipKit.map(({ surface, product, litres, from }) => [surface, product, litres, from])).toEqual([
      ['built-in', 'water-borne enamel', 0.1, 'tin'],
      ['masonry', 'acrylic masonry paint', 0.1, 'tin'],
      ['wall', 'acrylic wall paint', 0.1, 'tin'],
    ])
    expect(plan.chipKit[0]?.colour).toBe('grey, satin')
  })

  it('that of a spray shop comes with the work', () => {
    const plan = planFor({ sprayingWay: 'buy', builtInSystem: 'two-component-polyurethane' }, { sprayedOut: true })
    expect(plan.chipKit.map(({ product, from }) => [product, from])).toEqual([
      ['two-component polyurethane top coat', 'spray shop'],
      ['acrylic wall paint', 'tin'],
    ])
  })
})

describe('where a coating may be put on is a row of its family', () => {
  it('a solvent-borne one in the shop, not in the house, neither sprayed nor by hand; the way out is tried', () => {
    const plan = planFor({ builtInSystem: 'alkyd-enamel', paintPlace: 'site', paintMethod: 'hand' })
    expect(codes(plan)).toContain('S17')
    const [fix] = plan.messages.find((m) => m.code === 'S17')?.fixes ?? []
    expect(fix?.answers).toEqual([{ key: 'job.paintPlace', value: 'shop' }])
    expect(codes(planFor({ builtInSystem: 'alkyd-enamel', paintPlace: 'shop', paintMethod: 'hvlp' }))).toEqual(['N14'])
  })

  it('every system is of a family in the table, and a family says why and what to do', () => {
    const { families, systems } = coatingTable()
    for (const { family } of systems) expect(families.map(({ id }) => id)).toContain(family)
    for (const { why, todo } of families) expect(why.length * todo.length).toBeGreaterThan(0)
  })
})

it('what stays in tray and hose is counted once a product, also where two surfaces take the same', () => {
  const plan = planFor({ builtInSystem: 'water-enamel', paintMethod: 'hand' }, { painted: squareMetres(3) })
  const products = plan.lines.filter((line) => line.surface !== 'wall').map((line) => line.product)
  const dry = plan.lines
    .filter((line) => line.surface !== 'wall')
    .reduce((sum, line) => sum + (line.area * line.coats * line.wetMicrons) / 1000 / 0.9, 0)
  const all = plan.lines.filter((line) => line.surface !== 'wall').reduce((sum, line) => sum + line.litres, 0)
  expect(all - dry).toBeCloseTo(0.1 * new Set(products).size, 9)
})

it('films, coats and hours of a person’s own tin are reckoned with', () => {
  const context = contextFor('metric', { builtInSystem: 'water-enamel', paintMethod: 'hand' })
  const figures = figuresIn('metric', {
    'coating.water-enamel.top.wet-film': { value: 150, because: 'its sheet' },
    'coating.water-enamel.top.recoat-most': { value: 72, because: 'its sheet' },
  })
  const top = coating({ ...context, figures }, work()).lines.find((l) => l.surface === 'built-in' && l.layer === 'top')
  expect([top?.wetMicrons, top?.recoatHoursMost]).toEqual([150, 72])
  expect(top?.litres).toBeCloseTo(((2 * 1.12 + 0.3312) * 2 * 150) / 1000 / 0.9 + 0.1, 9)
})

it('no row guesses the most hours between coats: only a sheet can tell', () => {
  for (const system of coatingTable().systems.filter((row) => row.known !== 'read')) {
    expect(system.layers.map((layer) => layer.recoatHoursMost)).toEqual(system.layers.map(() => null))
  }
})
