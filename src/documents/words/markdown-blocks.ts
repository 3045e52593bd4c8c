import { marked, type Token, type Tokens } from 'marked'
import type { Block } from '../block.ts'

/** Headings, paragraphs, lists, and quoted text as a caution; other markdown is printed as its plain text. */
export function blocksOfMarkdown(text: string): readonly Block[] {
  return marked.lexer(text).flatMap(blockOf)
}

function blockOf(token: Token): readonly Block[] {
  switch (token.type) {
    case 'space':
    case 'hr':
    case 'def':
      return []
    case 'heading':
      return [{ kind: 'heading', text: plain(token) }]
    case 'list':
      return [{ kind: 'list', items: (token as Tokens.List).items.map(plain) }]
    case 'blockquote':
      return [{ kind: 'note', text: plain(token) }]
    default:
      return textOf(plain(token))
  }
}

const textOf = (text: string): readonly Block[] => (text.trim() === '' ? [] : [{ kind: 'paragraph', text }])

/** The words of a token and all within it, with markup taken off. */
function plain(token: Token): string {
  const inner = 'tokens' in token && token.tokens !== undefined ? token.tokens : undefined
  if (token.type === 'br') return ' '
  if (token.type === 'html') return token.raw
  const text = inner === undefined ? ('text' in token ? String(token.text) : '') : inner.map(plain).join('')
  return token.type === 'paragraph' || token.type === 'text' || token.type === 'list_item'
    ? text.replace(/\s*\n\s*/g, ' ')
    : text
}
