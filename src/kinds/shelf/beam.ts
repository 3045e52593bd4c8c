/** Bending coefficients k_b: a uniform load on simple ends at midspan, and on a cantilever at its free end (Wood Handbook, table 9-1). */
export const BENDING = { 'uniform, simple ends': 5 / 384, 'uniform, cantilever': 1 / 8 } as const

/**
 * First deflection of a beam: k_b · W · L³ / (E · I), W the total load (Wood Handbook, eq. 9-2, without its shear term).
 * Any coherent units: N, m, Pa, m⁴ or lb, in, psi, in⁴.
 */
export const beamDeflection = (beam: {
  readonly bending: keyof typeof BENDING
  readonly totalLoad: number
  readonly span: number
  readonly stiffness: number
  readonly secondMoment: number
}): number => (BENDING[beam.bending] * beam.totalLoad * beam.span ** 3) / (beam.stiffness * beam.secondMoment)

/** What a deflection grows to under a lasting load: first × (1 + k_def) (EN 1995-1-1, 2.2.3 and table 3.2). */
export const withCreep = (first: number, creep: number): number => first * (1 + creep)
