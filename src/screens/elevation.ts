import type { Plan } from '../plan/plan.ts'
import type { BayId } from '../things/place.ts'
import { type Length, less, longest, over, sum, ZERO } from '../units/length.ts'
import type { Look } from './look.ts'

interface Signs {
  readonly wall: string
  readonly edge: string
  readonly flat: string
  readonly thin: string
  readonly base: string
  readonly mantel: string
  readonly opening: string
  readonly asked: string
}
const BLOCKS: Signs = { wall: '│', edge: '│', flat: '▀', thin: '─', base: '·', mantel: '█', opening: '░', asked: '█' }
const ASCII: Signs = { wall: '|', edge: '|', flat: '=', thin: '-', base: '.', mantel: 'M', opening: ':', asked: '#' }

/** Terminal cells are about twice as high as wide (common practice, no source). */
const CELL_HEIGHTS = 2

/**
 * The front of the wall to scale, as seen from the room, in at most so many columns and rows; empty while the wall is not known.
 * Drawn later over earlier: opening, screen, boxes, shelves, mantel, walls. `asked` = the bay the question is about.
 */
export function elevation(
  plan: Plan,
  room: { readonly columns: number; readonly rows: number },
  look: Look,
  asked: BayId | undefined,
): readonly string[] {
  const { walls } = plan.survey
  const width = longest(ZERO, ...walls.map((w) => sum(w.originX, w.width)))
  const height = longest(ZERO, ...walls.map((w) => w.lowestCeiling))
  if (walls.length === 0 || width <= 0 || height <= 0) return []
  const unit = longest(over(width, room.columns - 1), over(height, CELL_HEIGHTS * room.rows))
  const grid = new Grid(Math.round(width / unit) + 1, Math.max(1, Math.round(height / (unit * CELL_HEIGHTS))), unit)
  const signs = look.signs === 'unicode' ? BLOCKS : ASCII
  drawBreasts(grid, plan, signs)
  drawBoxes(grid, plan, signs)
  drawDrawers(grid, plan, signs)
  drawShelves(grid, plan, signs)
  for (const wall of walls) {
    grid.column(wall.originX, ZERO, height, signs.wall)
    grid.column(sum(wall.originX, wall.width), ZERO, height, signs.wall)
    if (wall.bay.id === asked) grid.row(wall.originX, sum(wall.originX, wall.width), ZERO, signs.asked)
  }
  return grid.lines()
}

const originOf = (plan: Plan, bay: BayId): Length => plan.survey.walls.find((w) => w.bay.id === bay)?.originX ?? ZERO

function drawBreasts(grid: Grid, plan: Plan, signs: Signs): void {
  for (const { bay, opening, screen, mantel } of plan.mantel.breasts) {
    const origin = originOf(plan, bay.id)
    if (opening !== undefined)
      grid.fill(sum(origin, opening.x), opening.z, opening.width, opening.height, signs.opening)
    if (screen !== undefined) grid.frame(sum(origin, screen.x), screen.z, screen.width, screen.height, signs)
    if (mantel !== undefined)
      grid.fill(
        sum(origin, mantel.x),
        mantel.underside,
        mantel.length,
        less(mantel.top, mantel.underside),
        signs.mantel,
      )
  }
}

function drawBoxes(grid: Grid, plan: Plan, signs: Signs): void {
  for (const box of plan.boxes.boxes) {
    const x = sum(originOf(plan, box.run.bay.id), box.x)
    grid.column(x, box.run.z0, box.run.z1, signs.edge)
    grid.column(sum(x, box.width), box.run.z0, box.run.z1, signs.edge)
    grid.row(x, sum(x, box.width), box.run.z1, signs.flat)
    if (box.run.z0 > 0) grid.row(x, sum(x, box.width), ZERO, signs.base)
  }
}

/** The lower edge of each drawer front, inside its box; the lowest stands on the box's own line. */
function drawDrawers(grid: Grid, plan: Plan, signs: Signs): void {
  const inset = over(grid.unit, 1)
  for (const { box, x, width, z } of plan.fronts.drawers) {
    const left = sum(originOf(plan, box.run.bay.id), x, inset)
    grid.row(left, sum(left, less(width, inset, inset)), z, signs.thin)
  }
}

function drawShelves(grid: Grid, plan: Plan, signs: Signs): void {
  for (const shelf of plan.shelves.shelves) {
    const x = sum(originOf(plan, shelf.bay.id), shelf.x)
    grid.row(x, sum(x, shelf.backLength), shelf.z, signs.flat)
  }
}

/** Cells counted from the left and from the floor; anything drawn takes at least one. Lives only while one picture is drawn. */
class Grid {
  readonly #cells: string[][]
  constructor(
    readonly columns: number,
    readonly rows: number,
    readonly unit: Length,
  ) {
    this.#cells = Array.from({ length: rows }, () => Array.from({ length: columns }, () => ' '))
  }

  #across = (x: Length): number => Math.max(0, Math.min(this.columns - 1, Math.round(x / this.unit)))
  #up = (z: Length): number => Math.max(0, Math.min(this.rows - 1, Math.ceil(z / (this.unit * CELL_HEIGHTS)) - 1))

  #put(column: number, row: number, sign: string): void {
    const line = this.#cells[this.rows - 1 - row]
    if (line !== undefined) line[column] = sign
  }

  column(x: Length, from: Length, to: Length, sign: string): void {
    for (let row = this.#up(from); row <= this.#up(to); row++) this.#put(this.#across(x), row, sign)
  }

  row(from: Length, to: Length, z: Length, sign: string): void {
    for (let c = this.#across(from); c <= this.#across(to); c++) this.#put(c, this.#up(z), sign)
  }

  fill(x: Length, z: Length, width: Length, height: Length, sign: string): void {
    const top = this.#up(sum(z, height))
    for (let row = Math.min(top, z <= 0 ? 0 : this.#up(z) + 1); row <= top; row++)
      for (let c = this.#across(x); c <= this.#across(sum(x, width)); c++) this.#put(c, row, sign)
  }

  frame(x: Length, z: Length, width: Length, height: Length, signs: Signs): void {
    this.row(x, sum(x, width), z, signs.thin)
    this.row(x, sum(x, width), sum(z, height), signs.thin)
    this.column(x, z, sum(z, height), signs.edge)
    this.column(sum(x, width), z, sum(z, height), signs.edge)
  }

  lines(): readonly string[] {
    return this.#cells.map((line) => line.join(''))
  }
}
