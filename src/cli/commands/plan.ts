import { makePlan } from '../../plan/plan.ts'
import type { Given } from '../command.ts'
import { EXIT, type ExitCode } from '../exit-code.ts'
import { planJson } from '../plan-json.ts'
import { readJob } from '../read-input.ts'
import type { Surroundings } from '../surroundings.ts'

/** `plan JOB --json`: the whole plan as one JSON document, whatever it says about the job. */
export async function printPlan(given: Given, around: Surroundings): Promise<ExitCode> {
  const plan = makePlan(await readJob(given, around), 'thorough')
  around.print(JSON.stringify(planJson(plan), undefined, 2))
  return EXIT.done
}
