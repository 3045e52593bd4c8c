import { Liquid, type Template } from 'liquidjs'
import { TemplateBroken } from '../../things/failure.ts'
import { nearestWords } from '../../things/nearest.ts'
import type { Block } from '../block.ts'
import { blocksOfMarkdown } from './markdown-blocks.ts'
import { TEMPLATES, type TemplateName, type TemplateValues } from './template-list.ts'

/** Values and if-present only: no files, no own code, and an end to every loop. */
const engine = new Liquid({
  strictVariables: true,
  strictFilters: true,
  ownPropertyOnly: true,
  templates: {},
  parseLimit: 200_000,
  renderLimit: 200,
  memoryLimit: 2_000_000,
})

/** Parses every template before anything is written. Throws TemplateBroken naming file, line and what is wrong there. */
export function checkTemplates(texts: Readonly<Record<string, string>>): void {
  for (const name of Object.keys(TEMPLATES) as TemplateName[]) parsed(name, texts)
}

/** A template's text with its names filled in, as blocks of a page. Throws TemplateBroken. */
export function words<N extends TemplateName>(
  name: N,
  texts: Readonly<Record<string, string>>,
  values: TemplateValues<N>,
): readonly Block[] {
  const template = parsed(name, texts)
  const shown = Object.fromEntries(
    Object.entries<string | false>(values).map(([k, v]) => [k, v === false ? v : literal(v)]),
  )
  try {
    return blocksOfMarkdown(String(engine.renderSync(template, shown)))
  } catch (cause) {
    throw brokenAt(name, cause)
  }
}

function parsed(name: TemplateName, texts: Readonly<Record<string, string>>): Template[] {
  const text = texts[name]
  if (text === undefined) throw new TemplateBroken(name, 1, 'this file is not in the templates folder. Put it back.')
  try {
    checkNames(name, text)
    return engine.parse(text)
  } catch (cause) {
    throw cause instanceof TemplateBroken ? cause : brokenAt(name, cause)
  }
}

function checkNames(name: TemplateName, text: string): void {
  const known: readonly string[] = TEMPLATES[name]
  for (const [used, places] of Object.entries(engine.parseAndAnalyzeSync(text).globals)) {
    if (known.includes(used)) continue
    const nearest = nearestWords(used, known)[0]
    const hint = nearest === undefined ? '' : ` Did you mean "${nearest}"?`
    throw new TemplateBroken(
      name,
      places[0]?.location.row ?? 1,
      `there is no "${used}" here.${hint} This text may use: ${known.join(', ')}.`,
    )
  }
}

/** What the engine says, without its own file and line. */
function brokenAt(name: TemplateName, cause: unknown): TemplateBroken {
  const says = cause instanceof Error ? (cause.message.split(/, (?:file|line):/)[0] ?? cause.message) : String(cause)
  return new TemplateBroken(name, lineIn(cause), `it cannot be read here: ${says}.`)
}

function lineIn(cause: unknown): number {
  const line = cause instanceof Error ? /line:(\d+)/.exec(cause.message)?.[1] : undefined
  return line === undefined ? 1 : Number(line)
}

/** A value is a value: none of its letters may become a heading or a list. */
const literal = (value: string): string => value.replace(/\s+/g, ' ').replace(/[!-/:-@[-`{-~]/g, (sign) => `\\${sign}`)
