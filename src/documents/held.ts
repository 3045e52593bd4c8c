import type { QuestionKey } from '../things/field.ts'

/** Printed where a size would stand that rests on a measurement still to be taken. */
export const HOLD = 'HOLD'

/** Whether a measurement still to be taken can change it. */
export const isHeld = (thing: { readonly waitsFor: readonly QuestionKey[] }): boolean => thing.waitsFor.length > 0
