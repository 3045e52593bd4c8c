import { render, Text } from 'ink'

// The least an Ink program can do: the anchor the interview's first frame is measured against.
render(<Text>first frame</Text>)
