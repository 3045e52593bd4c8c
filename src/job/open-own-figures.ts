import { type OwnFigures, ownFiguresSchema } from '../figures/own-figures.ts'
import { InputUnreadable } from '../things/failure.ts'
import { describeFault } from './describe-fault.ts'
import { openJson } from './open.ts'

/** The figures in the bytes of `own-figures.json`. Throws InputUnreadable with every fault, its line and the figure it is about. */
export function openOwnFigures(bytes: Uint8Array, file: string): OwnFigures {
  const document = openJson(bytes, file)
  const read = ownFiguresSchema.safeParse(document.value)
  if (!read.success)
    throw new InputUnreadable(
      file,
      read.error.issues.flatMap((issue) => describeFault(issue, document)),
    )
  return read.data
}
