/** Second moment of a rectangle about its own middle, breadth b and height h: b·h³/12, in the unit of b and h to the fourth. */
export const rectangleMoment = (b: number, h: number): number => (b * h ** 3) / 12

/** Two skins t thick and b wide, their outer faces T apart, glued so that they act as one: 2·[b·t³/12 + b·t·((T − t)/2)²]. */
export const gluedSkinsMoment = (b: number, t: number, outer: number): number =>
  2 * (rectangleMoment(b, t) + b * t * ((outer - t) / 2) ** 2)

/** The same two skins loose on each other: 2·b·t³/12. */
export const looseSkinsMoment = (b: number, t: number): number => 2 * rectangleMoment(b, t)
