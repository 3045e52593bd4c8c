import type { Command } from './command.ts'

/** Every command. Each is loaded only when it is asked for, so that the first line comes at once. */
export const COMMANDS: Readonly<Record<string, Command>> = {
  start: {
    use: 'start',
    says: 'the interview (also without any command)',
    files: 0,
    options: [],
    needs: [],
    run: async (_given, around) => (await import('./commands/start.ts')).start(around),
  },
  demo: {
    use: 'demo [--out FILE.zip]',
    says: 'write the packet of an invented job, to see what you get',
    files: 0,
    options: ['out'],
    needs: [],
    run: async (given, around) => (await import('./commands/demo.ts')).demo(given, around),
  },
  pack: {
    use: 'pack JOB --out FILE.zip',
    says: 'write the job packet',
    files: 1,
    options: ['out'],
    needs: ['out'],
    run: async (given, around) => (await import('./commands/pack.ts')).pack(given, around),
  },
  plan: {
    use: 'plan JOB --json',
    says: 'print the whole plan: parts, joints, tasks, materials, price',
    files: 1,
    options: ['json'],
    needs: ['json'],
    run: async (given, around) => (await import('./commands/plan.ts')).printPlan(given, around),
  },
  check: {
    use: 'check JOB [--json]',
    says: 'print what stops the job, what to confirm, what to know',
    files: 1,
    options: ['json'],
    needs: [],
    run: async (given, around) => (await import('./commands/check.ts')).check(given, around),
  },
  schema: {
    use: 'schema',
    says: 'print the JSON Schema of a job file',
    files: 0,
    options: [],
    needs: [],
    run: async (_given, around) => (await import('./commands/schema.ts')).printSchema(around),
  },
}
