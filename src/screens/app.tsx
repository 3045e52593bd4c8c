import { Box, Text } from 'ink'
import { useSyncExternalStore } from 'react'
import type { Draw, FrameLine, Size, Span } from './frame.ts'
import type { Look } from './look.ts'

/** Something that changes, and tells it. */
export interface Watched<T> {
  readonly get: () => T
  readonly subscribe: (changed: () => void) => () => void
}

interface AppProps {
  readonly picture: Watched<Draw>
  readonly size: Watched<Size>
  readonly look: Look
}

/** Draws the picture line by line; keys do not come through here. */
export function App({ picture, size, look }: AppProps) {
  const draw = useSyncExternalStore(picture.subscribe, picture.get)
  const window = useSyncExternalStore(size.subscribe, size.get)
  const frame = draw(window, look)
  return (
    <Box flexDirection="column" width={window.columns}>
      {frame.map((line, row) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place on the screen
        <Row key={row} line={line} colour={look.colour} />
      ))}
    </Box>
  )
}

function Row({ line, colour }: { readonly line: FrameLine; readonly colour: boolean }) {
  const text = line.map((span) => span.text).join('')
  // A row without letters still takes its line.
  if (text.trim() === '') return <Text> </Text>
  return (
    <Text wrap="truncate">
      {line.map((span, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a span is its place in the row
        <Piece key={at} span={span} colour={colour} />
      ))}
    </Text>
  )
}

function Piece({ span, colour }: { readonly span: Span; readonly colour: boolean }) {
  if (span.weight === 'mark' && colour) return <Text color="magenta">{span.text}</Text>
  return <Text bold={span.weight === 'bold'}>{span.text}</Text>
}
