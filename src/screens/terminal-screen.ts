/** The screen of a terminal, taken over and given back. */
export interface TerminalScreen {
  readonly enter: () => void
  /** Gives the terminal back: main screen, cursor, no paste marks, no colour. May be called at any time, more than once. */
  readonly restore: () => void
}

const ENTER = '\u001B[?1049h\u001B[H\u001B[2J\u001B[?2004h\u001B[?25l'
const RESTORE = '\u001B[0m\u001B[?25h\u001B[?2004l\u001B[?1049l'

export function terminalScreen(stdout: { readonly write: (text: string) => unknown }): TerminalScreen {
  let ours = false
  return {
    enter: () => {
      ours = true
      stdout.write(ENTER)
    },
    restore: () => {
      if (!ours) return
      ours = false
      stdout.write(RESTORE)
    },
  }
}
