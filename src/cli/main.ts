#!/usr/bin/env node
import { run } from './run.ts'
import { realSurroundings } from './surroundings.ts'

// A reader that closed its end wants no more: nothing to report.
process.stdout.on('error', () => process.exit())
process.exitCode = await run(process.argv.slice(2), realSurroundings())
