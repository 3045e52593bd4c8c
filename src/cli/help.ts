import { COMMANDS } from './commands.ts'

/** The text of `--help`: examples first. */
export const helpText =
  (): string => `nichework plans painted built-ins: from the site survey to one zip with every paper of the job.

  nichework                                  open the interview
  nichework demo                             write the packet of an invented job
  nichework pack job.json --out packet.zip   write the packet of a job without the screens

Commands
${commandLines()}

JOB is a job file, a job packet, an answers file, or - for standard input. It is never written to.
MARK is what the papers print: L2-S1, L-H1 edge, box L2, joint 12, price, cost, hours, finish, sheets; or a question
or formula by its name: job.boxHeight, box.inside-width.   nichework explain job.json L2-S1
Two jobs, or one with an answer changed, side by side:     nichework compare job.json --with job.boxHeight=28
Options
  --out FILE.zip   where the packet goes
  --json           one JSON document on standard output
  --own-figures    reckon with the figures in your folder as they are now, not with those the job was begun with
  --with ANSWER    compare with one answer changed, as often as it is given: --with a.boxKind=tall
  --where ID       one figure: its value, its source, how you put in your own
  --help, -h       this text
  --version        the version

Environment
  NICHEWORK_HOME      folder for jobs, your own templates and own-figures.json (else the system's data folder)
  SOURCE_DATE_EPOCH   seconds since 1970: the date printed on a packet (else today)

Exit codes
  0 done · 1 fault in nichework · 2 wrong use, or no terminal · 3 the job has a stop, nothing written
  4 the file cannot be read · 5 cannot write · 6 something to confirm, nothing written`

const WIDEST = Math.max(...Object.values(COMMANDS).map((command) => command.use.length))

const commandLines = (): string =>
  Object.values(COMMANDS)
    .map((command) => `  ${command.use.padEnd(WIDEST)}   ${command.says}`)
    .join('\n')
