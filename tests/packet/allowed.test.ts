import { describe, expect, it } from 'vitest'
import { withConfirmation } from '../../src/interview/confirmed.ts'
import { emptyJob } from '../../src/job/job.ts'
import { heldBy } from '../../src/packet/allowed.ts'
import { type Message, messageKind, raise } from '../../src/things/message.ts'
import { day } from '../../src/units/day.ts'

const words = () => ({ short: 'short', why: 'why', todo: 'todo' })
const kind = (weight: Message['weight']) => messageKind({ code: `test-${weight}`, weight, source: 'test', says: words })
const message = (weight: Message['weight'], values: Message['values']) =>
  raise(kind(weight), { about: 'a.widths', place: 'alcove' }, values)
const job = emptyJob('held-1', '2026-11-25')

describe('what holds a packet', () => {
  it('is every stop and every confirm without a yes; never a note', () => {
    const messages = [message('stop', {}), message('confirm', { gap: 1 }), message('note', {})]
    expect(heldBy({ job, messages })).toEqual({ stops: [messages[0]], unanswered: [messages[1]] })
  })

  it('lets a confirmed one pass while its numbers stay, and asks again when they change', () => {
    const before = message('confirm', { gap: 1 })
    const confirmed = withConfirmation(job, before, day('2026-11-25'))
    expect(heldBy({ job: confirmed, messages: [before] }).unanswered).toEqual([])
    const after = message('confirm', { gap: 2 })
    expect(heldBy({ job: confirmed, messages: [after] }).unanswered).toEqual([after])
  })
})
