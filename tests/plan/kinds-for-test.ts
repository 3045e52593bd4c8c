import { readFileSync } from 'node:fs'
import { CATALOGUE } from '../../src/plan/catalogue.ts'
import type { Message, MessageKind } from '../../src/things/message.ts'

const list = readFileSync(new URL('../../src/plan/catalogue.ts', import.meta.url), 'utf8').split('CATALOGUE')[1] ?? ''

/** Every kind of the catalogue with the name it is exported by. */
export const KINDS: readonly { readonly name: string; readonly kind: MessageKind<never> }[] = [
  ...list.matchAll(/^ {2}(\w+),$/gm),
].flatMap(([, name = ''], i) => {
  const kind = CATALOGUE[i]
  return kind === undefined ? [] : [{ name, kind }]
})

/** Whether a message is of this kind: the kind says the very words of it. */
export function isOf(kind: MessageKind<never>, message: Message): boolean {
  if (kind.code !== message.code || kind.weight !== message.weight || kind.source !== message.source) return false
  try {
    const { short, why, todo } = kind.says(message.values as never)
    return short === message.short && why === message.why && todo === message.todo
  } catch {
    return false
  }
}
