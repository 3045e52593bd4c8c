import { parseArgs } from 'node:util'
import { WrongUse } from '../things/failure.ts'
import { nearestWords } from '../things/nearest.ts'
import type { Command, Given, Option } from './command.ts'
import { COMMANDS } from './commands.ts'

export type Asked =
  | { readonly kind: 'help' }
  | { readonly kind: 'version' }
  | { readonly kind: 'command'; readonly command: Command; readonly given: Given }

const OPTIONS = {
  out: { type: 'string' },
  json: { type: 'boolean' },
  'own-figures': { type: 'boolean' },
  where: { type: 'string' },
  with: { type: 'string', multiple: true },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
} as const

/** What a command line asks for. Throws WrongUse with the nearest name or the way the command is written. */
export function readCommand(words: readonly string[]): Asked {
  const { values, positionals } = parsed(words)
  if (values.help === true) return { kind: 'help' }
  if (values.version === true) return { kind: 'version' }
  const [name = 'start', ...behind] = positionals
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined
  if (command === undefined)
    throw new WrongUse(`There is no command "${name}".${nearest(name, Object.keys(COMMANDS))} See nichework --help.`)
  const given = {
    files: command.words === undefined ? behind : behind.slice(0, command.files),
    words: command.words === undefined ? [] : behind.slice(command.files),
    out: values.out,
    json: values.json ?? false,
    ownFigures: values['own-figures'] ?? false,
    where: values.where,
    with: values.with ?? [],
  }
  checkGiven(name, command, given)
  return { kind: 'command', command, given }
}

function parsed(words: readonly string[]) {
  // Unknown options are looked for here, to name the nearest one.
  const read = parseArgs({ args: [...words], options: OPTIONS, allowPositionals: true, strict: false, tokens: true })
  for (const token of read.tokens) {
    if (token.kind !== 'option') continue
    if (!Object.hasOwn(OPTIONS, token.name)) {
      throw new WrongUse(
        `There is no option ${token.rawName}.${nearest(token.name, Object.keys(OPTIONS), '--')} See nichework --help.`,
      )
    }
    if (token.name === 'out' && (token.value === undefined || token.value === ''))
      throw new WrongUse('--out needs a file name: --out packet.zip')
    if (token.name === 'where' && (token.value === undefined || token.value === ''))
      throw new WrongUse('--where needs the name of a figure: --where filler.nominal')
    if (token.name === 'with' && (token.value === undefined || token.value === ''))
      throw new WrongUse('--with needs a question and its answer: --with a.boxKind=tall')
  }
  return parseArgs({ args: [...words], options: OPTIONS, allowPositionals: true })
}

function nearest(typed: string, known: readonly string[], before = ''): string {
  const [word] = nearestWords(typed, known)
  return word === undefined ? '' : ` Did you mean ${before}${word}?`
}

function checkGiven(name: string, command: Command, given: Given): void {
  const wrong = (problem: string): never => {
    throw new WrongUse(`${problem} It is written: nichework ${command.use}`)
  }
  if (given.files.length < command.files) wrong(`${name} needs a job.`)
  if (command.words !== undefined && given.words.length === 0) wrong(`${name} needs ${command.words}.`)
  const most = command.files + (command.moreFiles ?? 0)
  if (given.files.length > most) wrong(`${name} has no use for "${given.files[most]}".`)
  const has: Readonly<Record<Option, boolean>> = {
    out: given.out !== undefined,
    json: given.json,
    'own-figures': given.ownFigures,
    where: given.where !== undefined,
    with: given.with.length > 0,
  }
  for (const option of ['out', 'json', 'own-figures', 'where', 'with'] as const) {
    if (has[option] && !command.options.includes(option)) wrong(`${name} has no option --${option}.`)
    if (!has[option] && command.needs.includes(option)) wrong(`${name} needs --${option}.`)
  }
}
