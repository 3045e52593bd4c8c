import { describe, expect, it } from 'vitest'
import { checkTemplates, words } from '../../src/documents/words/template.ts'
import { TemplateBroken } from '../../src/things/failure.ts'
import { ASSETS } from './assets.ts'

const withText = (name: string, text: string) => ({ ...ASSETS.templates, [name]: text })
const brokenBy = (work: () => unknown): TemplateBroken => {
  try {
    work()
  } catch (error) {
    if (error instanceof TemplateBroken) return error
    throw error
  }
  throw new Error('Nothing was thrown.')
}

describe('templates', () => {
  it('ours are all whole', () => {
    expect(() => checkTemplates(ASSETS.templates)).not.toThrow()
  })

  it('a name that is not offered is named with its file, line and the nearest one', () => {
    const broken = brokenBy(() => checkTemplates(withText('quote.md', 'Dear {{ client }}\n\nvalid to {{ valdi }}')))
    expect([broken.file, broken.line]).toEqual(['quote.md', 3])
    expect(broken.problem).toContain('"valdi"')
    expect(broken.problem).toContain('"valid"')
  })

  it('an unclosed tag is named with its line', () => {
    const broken = brokenBy(() => checkTemplates(withText('care.md', 'One\n\n{% if paint %} two')))
    expect([broken.file, broken.line]).toEqual(['care.md', 3])
  })

  it('a missing file is named', () => {
    const { 'care.md': _gone, ...rest } = ASSETS.templates
    expect(brokenBy(() => checkTemplates(rest)).file).toBe('care.md')
  })

  it.each(['{% include "/etc/passwd" %}', '{% render "quote.md" %}', '{{ job.constructor.name }}'])(
    'reaches no file and no code: %s',
    (text) => {
      const given = { job: 'x', revision: '1', finish: 'y' }
      expect(() => words('start-here.md', withText('start-here.md', text), given)).toThrow(TemplateBroken)
    },
  )

  it('a value stays a value: it cannot become a heading, a list or a picture', () => {
    const given = { job: '# Big *bold* - [x](http://y) 1. one', revision: '1', finish: 'y' }
    expect(words('start-here.md', withText('start-here.md', '{{ job }}'), given)).toEqual([
      { kind: 'paragraph', text: '# Big *bold* - [x](http://y) 1. one' },
    ])
  })

  it('headings, lists and cautions become blocks', () => {
    const text = '## How\n\n- one\n- two\n\n> careful'
    const given = { job: 'x', revision: '1', finish: 'y' }
    expect(words('start-here.md', withText('start-here.md', text), given)).toEqual([
      { kind: 'heading', text: 'How' },
      { kind: 'list', items: ['one', 'two'] },
      { kind: 'note', text: 'careful' },
    ])
  })
})
