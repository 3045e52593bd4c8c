/** One key press, or one paste. */
export type Key =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'paste'; readonly text: string }
  | { readonly kind: 'key'; readonly name: KeyName }

export type KeyName =
  | 'enter'
  | 'esc'
  | 'tab'
  | 'shift-tab'
  | 'backspace'
  | 'delete'
  | 'up'
  | 'down'
  | 'left'
  | 'right'
  | 'home'
  | 'end'
  | 'page-up'
  | 'page-down'
  | 'f1'
  | 'f2'
  | 'f4'
  | 'leave'
  | 'suspend'
  | 'clear'
  | 'clear-word'
