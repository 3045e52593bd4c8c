import type { Figures } from '../figures/figures.ts'
import { thicknessSold } from '../figures/stock-lengths.ts'
import type { MaterialId, Sheet, Stick } from '../things/material.ts'
import type { Length } from '../units/length.ts'
import { showLengthWithUnit } from '../units/show-length.ts'

/** Panels and sticks are named by what is asked for at the counter; same thickness = same material. */
const SHEET = /^(mdf|plywood|prefinished)-(\d+)$/
const STICK = /^softwood-(\d+)x(\d+)$/

export const plywood = (thickness: Length): MaterialId => `plywood-${thickness}`
export const mdf = (thickness: Length): MaterialId => `mdf-${thickness}`
/** Faced on both sides by its maker: sawn and edged, never painted. */
export const prefinishedPanel = (thickness: Length): MaterialId => `prefinished-${thickness}`
export const softwood = (width: Length, thickness: Length): MaterialId => `softwood-${width}x${thickness}`

/** The material behind an id. Throws on an id no part may carry. */
export function materialOf(id: MaterialId, figures: Figures): Sheet | Stick {
  const sheet = SHEET.exec(id)
  if (sheet !== null) return sheetOf(id, familyOf(sheet[1]), Number(sheet[2]) as Length, figures)
  const stick = STICK.exec(id)
  if (stick !== null) return stickOf(id, Number(stick[1]) as Length, Number(stick[2]) as Length, figures)
  throw new Error(`No material ${id}.`)
}

/** What differs between the kinds of sheet: words at the counter, figure row of the density, and grain. */
const FAMILIES = {
  mdf: { says: 'MDF', after: ', double-refined', density: 'density.mdf', grain: false },
  plywood: { says: 'plywood', after: '', density: 'density.plywood', grain: true },
  prefinished: { says: 'prefinished panel', after: ', both faces finished', density: 'density.mdf', grain: false },
} as const
type Family = (typeof FAMILIES)[keyof typeof FAMILIES]

const familyOf = (word: string | undefined): Family =>
  word === 'mdf' || word === 'prefinished' ? FAMILIES[word] : FAMILIES.plywood

/** Whether a sheet is bought finished on both faces. */
export const isPrefinishedSheet = (id: MaterialId): boolean => SHEET.exec(id)?.[1] === 'prefinished'

const sheetOf = (id: MaterialId, family: Family, thickness: Length, figures: Figures): Sheet => ({
  kind: 'sheet',
  id,
  name: `${family.says} ${thicknessName(thickness, figures)}${family.after}`,
  thickness,
  sheetLength: figures.length('sheet.length'),
  sheetWidth: figures.length('sheet.width'),
  density: figures.number(family.density),
  grain: family.grain,
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
