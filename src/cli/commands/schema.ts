import { jobJsonSchemaText } from '../../job/json-schema.ts'
import { EXIT, type ExitCode } from '../exit-code.ts'
import type { Surroundings } from '../surroundings.ts'

/** `schema`: the JSON Schema of a job file. */
export async function printSchema(around: Surroundings): Promise<ExitCode> {
  around.print(jobJsonSchemaText().trimEnd())
  return EXIT.done
}
