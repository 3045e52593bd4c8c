import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { FIELDS } from '../../src/job/fields.ts'
import { jobJsonSchemaText } from '../../src/job/json-schema.ts'

describe('the JSON Schema of a job file', () => {
  it('is the one in shared; after a change of a question: node dist/cli.js schema > shared/job.schema.json', () => {
    expect(readFileSync(new URL('../../shared/job.schema.json', import.meta.url), 'utf8')).toBe(jobJsonSchemaText())
  })

  it('knows every question by its section and id', () => {
    const schema = JSON.parse(jobJsonSchemaText())
    for (const field of FIELDS) {
      const section = schema.properties[field.section]
      const at = field.each === 'job' ? section.properties.job : section.additionalProperties
      expect(Object.keys(at.properties), field.id).toContain(field.id)
    }
  })
})
