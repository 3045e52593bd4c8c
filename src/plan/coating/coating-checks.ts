import { builtInSystem, paintMethod, paintPlace } from '../../job/chapters/finish.ts'
import { sprayingWay } from '../../job/chapters/make-or-buy.ts'
import type { CoatingSystem } from '../../kinds/coating.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import type { CoatingChoices, Method } from './coating-choices.ts'
import type { CoatingLine } from './coating-lines.ts'
import { coatingNotHere, dryingFromTheTin, notByThatMethod, sprayingOnSite } from './coating-messages.ts'

/** What the finish asks of the person: where it may be put on, by what, and that the tins are read. */
export function coatingMessages(choices: CoatingChoices, lines: readonly CoatingLine[]): readonly Message[] {
  const system = choices.systems['built-in']
  const painted = lines.some((line) => line.surface === 'built-in')
  return [...(system === undefined || !painted ? [] : putOnMessages(system, choices)), ...drying(lines)]
}

function putOnMessages(system: CoatingSystem, choices: CoatingChoices): readonly Message[] {
  const sprayed = choices.method !== 'hand'
  const onSite = choices.where === 'site'
  const here = mayBePutOn(system, choices)
  return [
    ...(here ? [] : [notHere(system, onSite)]),
    ...(system.methods.includes(choices.method) ? [] : [notSo(system, choices.method)]),
    ...(onSite && sprayed && here ? [raise(sprayingOnSite, at(paintPlace), { coating: system.says })] : []),
  ]
}

/** The family says where it may be put on at all; a system may be kept from being sprayed in a house. */
function mayBePutOn({ family, sprayOnSite }: CoatingSystem, { method, where }: CoatingChoices): boolean {
  const allowed = where === 'site' ? family.onSite : family.inShop
  if (allowed !== 'any way') return allowed === 'by hand' && method === 'hand'
  return where !== 'site' || method === 'hand' || sprayOnSite
}

const at = (field: { readonly id: string }) => ({ about: questionKey('job', field), place: 'finish' })

function notHere({ says, family }: CoatingSystem, onSite: boolean): Message {
  const values = {
    coating: says,
    place: onSite ? 'in the client’s house' : 'in your own shop',
    why: family.why,
    todo: family.todo,
  }
  return raise(coatingNotHere, { ...at(builtInSystem), fixes: [INSTEAD[family.instead]] }, values)
}

const INSTEAD: Readonly<Record<CoatingSystem['family']['instead'], Fix>> = {
  'spray shop': { says: 'have it sprayed out', answers: [{ key: questionKey('job', sprayingWay), value: 'buy' }] },
  'own shop': { says: 'paint in the shop', answers: [{ key: questionKey('job', paintPlace), value: 'shop' }] },
}

function notSo({ says, methods }: CoatingSystem, method: Method): Message {
  const words = methods.map((m) => METHOD_WORDS[m]).join(', ')
  const values = { coating: says, method: METHOD_WORDS[method], methods: words }
  return raise(notByThatMethod, { ...at(paintMethod), fixes: methodsOf(methods) }, values)
}

const methodsOf = (methods: readonly Method[]): readonly Fix[] =>
  methods.map((value) => ({
    says: METHOD_WORDS[value],
    answers: [{ key: questionKey('job', paintMethod), value }],
  }))

const METHOD_WORDS = { hand: 'brush and roller', hvlp: 'high-volume low-pressure gun', airless: 'airless gun' } as const

const drying = (lines: readonly CoatingLine[]): readonly Message[] =>
  lines.length === 0
    ? []
    : [
        raise(
          dryingFromTheTin,
          { about: questionKey('job', builtInSystem), place: 'finish' },
          { coatings: [...new Set(lines.map((line) => line.product))].join(', ') },
        ),
      ]
