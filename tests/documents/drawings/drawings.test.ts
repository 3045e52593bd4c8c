import { describe, expect, it } from 'vitest'
import { cutOutDrawing } from '../../../src/documents/drawings/cut-out-drawing.ts'
import { elevation } from '../../../src/documents/drawings/elevation.ts'
import { layoutDrawing } from '../../../src/documents/drawings/layout-drawing.ts'
import { forHelper } from '../../../src/documents/for-helper.ts'
import type { Drawing, DrawingBox } from '../../../src/geometry/drawing.ts'
import { inchPlan } from '../fixture.ts'

const plan = inchPlan()
const view = forHelper(plan)
const labelled = (drawing: Drawing): readonly { readonly says: string; readonly box: DrawingBox }[] =>
  drawing.shapes.flatMap((s) => (s.kind === 'label' ? [{ says: s.lines.join(' '), box: s.box }] : []))

describe('a panel layout as drawn', () => {
  it('shows each part at its true size inside the sheet, with its mark', () => {
    expect(view.layouts.length).toBeGreaterThan(2)
    for (const layout of view.layouts) {
      const drawing = layoutDrawing(layout, view.show)
      for (const { part, x, y, length, width } of layout.laid) {
        const drawn = labelled(drawing).find(({ box }) => box.x === x && box.z === y)
        expect(drawn?.says).toContain(part.mark)
        expect([drawn?.box.width, drawn?.box.height]).toEqual([length, width])
        expect(x + length).toBeLessThanOrEqual(drawing.frame.width)
        expect(y + width).toBeLessThanOrEqual(drawing.frame.height)
      }
    }
  })
})

describe('the front elevation as drawn', () => {
  const drawing = elevation(view)

  it('is as wide as the wall and as high as its highest ceiling', () => {
    const widths = plan.survey.walls.reduce((total, wall) => total + wall.width, 0)
    expect(drawing?.frame.width).toBe(widths)
    expect(drawing?.frame.height).toBe(Math.max(...plan.survey.walls.map((w) => w.lowestCeiling)))
  })

  it('gives every row of widths the whole wall, and every shelf its height', () => {
    const shapes = drawing?.shapes ?? []
    for (const row of [1, 2, 3]) {
      const chain = shapes.flatMap((s) => (s.kind === 'dimension' && s.side === 'below' && s.row === row ? [s] : []))
      expect(chain.reduce((total, s) => total + (s.to - s.from), 0)).toBe(drawing?.frame.width)
    }
    const heights = new Set(shapes.flatMap((s) => (s.kind === 'dimension' && s.side !== 'below' ? [s.to] : [])))
    expect(plan.shelves.shelves.length).toBeGreaterThan(0)
    for (const shelf of plan.shelves.shelves) expect(heights.has(shelf.z)).toBe(true)
  })

  it('stands every door on the wall where the plan has it', () => {
    for (const leaf of plan.fronts.leaves) {
      const wall = plan.survey.walls.find((w) => w.bay.id === leaf.box.run.bay.id)
      const drawn = labelled(
        drawing ?? { says: '', frame: { x: 0, z: 0, width: 0, height: 0 } as DrawingBox, shapes: [] },
      ).find(({ says }) => says === leaf.mark)
      expect(drawn?.box.x).toBe((wall?.originX ?? 0) + leaf.x)
      expect(drawn?.box.z).toBe(leaf.z)
    }
  })
})

describe('cut-outs as drawn', () => {
  it('lie inside their panel, at the distances printed', () => {
    const cut = view.parts.filter((part) => part.cutOuts.length > 0)
    expect(cut.length).toBeGreaterThan(0)
    for (const part of cut) {
      const drawing = cutOutDrawing(part, view.show)
      const [panel, ...holes] = drawing.shapes.flatMap((s) => (s.kind === 'rectangle' ? [s.box] : []))
      expect(holes).toHaveLength(part.cutOuts.length)
      for (const hole of holes) {
        expect(hole.x).toBeGreaterThanOrEqual(0)
        expect(hole.x + hole.width).toBeLessThanOrEqual(panel?.width ?? 0)
        expect(hole.z + hole.height).toBeLessThanOrEqual(panel?.height ?? 0)
      }
    }
  })
})
