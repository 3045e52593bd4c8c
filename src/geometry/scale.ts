import { inMillimetres } from '../units/length.ts'
import type { UnitSystem } from '../units/show-length.ts'
import { type DimensionSide, type Drawing, dimensionRows } from './drawing.ts'

/** A drawing scale: `1/2 in = 1 ft (1:24)` or `1:20`. */
export interface Scale {
  readonly ratio: number
  readonly says: string
}

const plain = (ratio: number): Scale => ({ ratio, says: `1:${ratio}` })

/** ISO 5455 (from memory). */
const METRIC: readonly Scale[] = [1, 2, 5, 10, 20, 50, 100, 200].map(plain)

/** Architects' scales of the US: common practice, no source. */
const INCH: readonly Scale[] = [
  { ratio: 1, says: 'full size' },
  { ratio: 2, says: '6 in = 1 ft (1:2)' },
  { ratio: 4, says: '3 in = 1 ft (1:4)' },
  { ratio: 8, says: '1 1/2 in = 1 ft (1:8)' },
  { ratio: 12, says: '1 in = 1 ft (1:12)' },
  { ratio: 16, says: '3/4 in = 1 ft (1:16)' },
  { ratio: 24, says: '1/2 in = 1 ft (1:24)' },
  { ratio: 48, says: '1/4 in = 1 ft (1:48)' },
  { ratio: 96, says: '1/8 in = 1 ft (1:96)' },
  { ratio: 192, says: '1/16 in = 1 ft (1:192)' },
]

/** Paper in millimetres. */
export interface PaperArea {
  readonly width: number
  readonly height: number
}

/** Paper taken by one row of dimensions above or below, and at a side (where figures stand unturned), mm. */
export const DIMENSION_ROW = 8.5
export const DIMENSION_COLUMN = 15

/** The first scale of the unit system, from the largest picture down, at which `frame` millimetres fit the paper. */
export function scaleThatFits(frame: PaperArea, paper: PaperArea, units: UnitSystem): Scale {
  const scales = units === 'inch' ? INCH : METRIC
  const least = Math.max(frame.width / paper.width, frame.height / paper.height)
  const fits = scales.find((s) => s.ratio >= least)
  return fits ?? plain(Math.ceil(least / 100) * 100)
}

/** The scale of a drawing on a piece of paper, room for its dimension rows kept. */
export function scaleOfDrawing(drawing: Drawing, paper: PaperArea, units: UnitSystem): Scale {
  const rows = (...sides: readonly DimensionSide[]) =>
    sides.reduce((total, side) => total + dimensionRows(drawing, side), 0)
  const frame = { width: inMillimetres(drawing.frame.width), height: inMillimetres(drawing.frame.height) }
  const room = {
    width: paper.width - DIMENSION_COLUMN * rows('left', 'right'),
    height: paper.height - DIMENSION_ROW * rows('above', 'below'),
  }
  return scaleThatFits(frame, room, units)
}

/** As large as the paper allows, at no named scale: for pictures that nobody measures. */
export function largestScale(drawing: Drawing, paper: PaperArea): Scale {
  const { width, height } = drawing.frame
  return {
    ratio: Math.max(inMillimetres(width) / paper.width, inMillimetres(height) / paper.height),
    says: 'not to scale',
  }
}
