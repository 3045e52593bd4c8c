import type { Figures } from '../figures/figures.ts'
import { thicknessSold } from '../figures/stock-lengths.ts'
import type { MaterialId, Sheet, Stick } from '../things/material.ts'
import type { Length } from '../units/length.ts'
import { showLengthWithUnit } from '../units/show-length.ts'

/** Panels and sticks are named by what is asked for at the counter; same thickness = same material. */
const SHEET = /^(mdf|plywood)-(\d+)$/
const STICK = /^softwood-(\d+)x(\d+)$/

export const plywood = (thickness: Length): MaterialId => `plywood-${thickness}`
export const mdf = (thickness: Length): MaterialId => `mdf-${thickness}`
export const softwood = (width: Length, thickness: Length): MaterialId => `softwood-${width}x${thickness}`

/** The material behind an id. Throws on an id no part may carry. */
export function materialOf(id: MaterialId, figures: Figures): Sheet | Stick {
  const sheet = SHEET.exec(id)
  if (sheet !== null) return sheetOf(id, sheet[1] === 'mdf' ? 'MDF' : 'plywood', Number(sheet[2]) as Length, figures)
  const stick = STICK.exec(id)
  if (stick !== null) return stickOf(id, Number(stick[1]) as Length, Number(stick[2]) as Length, figures)
  throw new Error(`No material ${id}.`)
}

const sheetOf = (id: MaterialId, family: 'MDF' | 'plywood', thickness: Length, figures: Figures): Sheet => ({
  kind: 'sheet',
  id,
  name: `${family} ${thicknessName(thickness, figures)}${family === 'MDF' ? ', double-refined' : ''}`,
  thickness,
  sheetLength: figures.length('sheet.length'),
  sheetWidth: figures.length('sheet.width'),
  density: figures.number(family === 'MDF' ? 'density.mdf' : 'density.plywood'),
  grain: family === 'plywood',
})

/** Asked for by the name it is sold under; what the caliper says stands beside it where that differs. */
function thicknessName(measured: Length, { units }: Figures): string {
  const sold = thicknessSold(measured, units)
  const name = showLengthWithUnit(sold, units)
  return sold === measured ? name : `${name} (measures ${showLengthWithUnit(measured, units)})`
}

const stickOf = (id: MaterialId, width: Length, thickness: Length, figures: Figures): Stick => ({
  kind: 'stick',
  id,
  name: `softwood ${showLengthWithUnit(width, figures.units)} × ${showLengthWithUnit(thickness, figures.units)}`,
  width,
  thickness,
  stockLength: figures.length('stick.length'),
  density: figures.number('density.softwood'),
})
