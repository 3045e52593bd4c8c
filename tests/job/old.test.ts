import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { SCHEMA_VERSION } from '../../src/job/job.ts'
import { openJob } from '../../src/job/open.ts'

const FOLDER = new URL('./old/', import.meta.url)

describe('stored job files of every version', () => {
  it('are there, one for each version so far', () => {
    expect(readdirSync(FOLDER)).toEqual(
      Array.from({ length: SCHEMA_VERSION }, (_, index) => `schema-${index + 1}.json`),
    )
  })

  it.each(readdirSync(FOLDER))('%s opens', (name) => {
    expect(openJob(readFileSync(new URL(name, FOLDER)), name).schema).toBe(SCHEMA_VERSION)
  })
})
