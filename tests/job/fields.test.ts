import { describe, expect, it } from 'vitest'
import { FIELDS } from '../../src/job/fields.ts'

describe('the question list', () => {
  it('gives every question an id of its own', () => {
    expect(new Set(FIELDS.map((f) => f.id)).size).toBe(FIELDS.length)
  })
  it.each(FIELDS.map((f) => [f.id, f] as const))(
    '%s asks one sentence, says why in one line, and never asks with "not"',
    (_id, field) => {
      const question = field.asks(undefined)
      expect(question.length).toBeLessThanOrEqual(120)
      expect(question).not.toMatch(/\bnot\b/i)
      expect(field.why.length).toBeGreaterThan(10)
      expect(field.short.length).toBeLessThanOrEqual(20)
    },
  )
})
