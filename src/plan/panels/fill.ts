import { type Bed, type Block, comparedArea, type Free, type Spot } from './block.ts'

/** Which free rectangle a block takes: the one left with least area, least short side, or least long side. */
export type Choice = 'area' | 'short' | 'long'
/** Which way the rest of the rectangle is parted: the first cut across the sheet's length, along it, or by what is left. */
export type Split = 'across' | 'along' | 'shorter-left' | 'longer-left' | 'largest-rest'
export interface FillRule {
  readonly choice: Choice
  readonly split: Split
}

export interface Filled {
  /** Spots by sheet. */
  readonly sheets: readonly (readonly Spot[])[]
  /** Area of the largest rectangle left free, mm². */
  readonly largestFree: number
}

interface Fit {
  readonly at: number
  readonly turned: boolean
  readonly score: number
}

/**
 * Lays blocks in the order given. Each takes the corner of a free rectangle, and the rest of it is parted by one
 * straight cut: so every sheet can be sawn with through-cuts. A new sheet is opened when no free rectangle holds the block.
 * Every block must fit the bed.
 */
export function fill(blocks: readonly Block[], bed: Bed, rule: FillRule): Filled {
  // The lists grow in place: this runs some hundred times for one plan.
  const sheets: Spot[][] = []
  const free: Free[] = []
  for (const block of blocks) {
    const found = bestFit(free, block, rule.choice)
    const fit = found ?? freshSheet(sheets, free, block, bed)
    const [rect] = free.splice(fit.at, 1)
    if (rect === undefined) continue
    const spot = spotIn(rect, block, fit.turned)
    sheets[rect.sheet]?.push(spot)
    free.push(...rests(rect, spot, rule.split))
  }
  return { sheets, largestFree: free.reduce((most, f) => Math.max(most, comparedArea(f)), 0) }
}

function bestFit(free: readonly Free[], block: Block, choice: Choice): Fit | undefined {
  let best: Fit | undefined
  for (const [at, rect] of free.entries()) {
    for (const turned of block.mayTurn && block.length !== block.width ? [false, true] : [false]) {
      const restLength = rect.length - (turned ? block.width : block.length)
      const restWidth = rect.width - (turned ? block.length : block.width)
      if (restLength < 0 || restWidth < 0) continue
      const score = scoreOf(choice, rect, block, restLength, restWidth)
      if (best === undefined || score < best.score) best = { at, turned, score }
    }
  }
  return best
}

function scoreOf(choice: Choice, rect: Free, block: Block, restLength: number, restWidth: number): number {
  if (choice === 'area') return comparedArea(rect) - comparedArea(block)
  return choice === 'short' ? Math.min(restLength, restWidth) : Math.max(restLength, restWidth)
}

/** Opens a sheet; the block lies along it where it can. */
function freshSheet(sheets: Spot[][], free: Free[], block: Block, bed: Bed): Fit {
  free.push({ sheet: sheets.length, x: 0, y: 0, ...bed })
  sheets.push([])
  return { at: free.length - 1, turned: block.length > bed.length || block.width > bed.width, score: 0 }
}

const spotIn = (rect: Free, block: Block, turned: boolean): Spot => ({
  block: block.id,
  x: rect.x,
  y: rect.y,
  length: turned ? block.width : block.length,
  width: turned ? block.length : block.width,
  turned,
})

function rests(rect: Free, spot: Spot, split: Split): readonly Free[] {
  const right = rect.length - spot.length
  const above = rect.width - spot.width
  const across = cutsAcross(split, { right, above }, rect, spot)
  const beyond = { ...rect, x: rect.x + spot.length, length: right, width: across ? rect.width : spot.width }
  const beside = { ...rect, y: rect.y + spot.width, width: above, length: across ? spot.length : rect.length }
  return [beyond, beside].filter((r) => r.length > 0 && r.width > 0)
}

function cutsAcross(split: Split, left: { right: number; above: number }, rect: Free, spot: Spot): boolean {
  switch (split) {
    case 'across':
      return true
    case 'along':
      return false
    case 'shorter-left':
      return left.right >= left.above
    case 'longer-left':
      return left.right < left.above
    case 'largest-rest': {
      const acrossRest = comparedArea({ length: left.right, width: rect.width })
      const alongRest = comparedArea({ length: rect.length, width: left.above })
      const acrossOther = comparedArea({ length: spot.length, width: left.above })
      const alongOther = comparedArea({ length: left.right, width: spot.width })
      return Math.max(acrossRest, acrossOther) >= Math.max(alongRest, alongOther)
    }
  }
}
