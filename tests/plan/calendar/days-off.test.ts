import { describe, expect, it } from 'vitest'
import { readDaysOff } from '../../../src/plan/calendar/days-off.ts'

describe('days off as people list them', () => {
  it('reads ISO days apart by spaces, commas or semicolons, and spans', () => {
    const { days, messages } = readDaysOff('2026-12-24, 2026-12-28;2027-1-4  2026-12-30..2027-01-01')
    expect(days).toEqual(['2026-12-24', '2026-12-28', '2027-01-04', '2026-12-30', '2026-12-31', '2027-01-01'])
    expect(messages).toEqual([])
  })

  it.each(['christmas', '2026-02-30', '24.12.2026', '2027-01-05..2027-01-01', '2026-12-24..soon'])(
    'says that "%s" is not a day, and goes on with the others',
    (word) => {
      const { days, messages } = readDaysOff(`${word} 2026-12-28`)
      expect(days).toEqual(['2026-12-28'])
      expect(messages.map((m) => [m.weight, m.values.word])).toEqual([['note', word]])
      expect(messages[0]?.why).toContain('2026-12-24')
    },
  )
})
