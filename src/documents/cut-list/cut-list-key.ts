import type { BookCell, BookSheet } from '../book.ts'
import type { ForHelper } from '../for-helper.ts'
import { rolesUsed } from '../mark-words.ts'
import { unitWord } from '../paper-size.ts'

/** What the words and letters of the cut list mean, so that nobody has to learn them. */
export function cutListKey(view: ForHelper): BookSheet {
  const made = view.parts.filter((part) => part.supply === 'made')
  const marks = made.map((part) => part.mark)
  const bays = new Set(made.map((part) => part.bay))
  const rows: readonly (readonly BookCell[])[] = [
    [{ bold: 'sizes' }, `All sizes in ${unitWord(view.show.units)}, length before width.`],
    [{ bold: '=' }, 'Saw it at its finished size. Only what stays long has another saw size.'],
    [{ bold: 'HOLD' }, 'Do not saw: a measurement is missing. The row says which.'],
    [{ bold: 'leave long' }, 'Kept too long on purpose; it is trimmed to the wall on site.'],
    [{ bold: 'shows' }, 'Faces and edges that are seen when all is fixed.'],
    [{ bold: 'sawn, fits' }, 'Tick when it is sawn; tick again when it was tried in its place.'],
    [{ bold: 'marks' }, 'Say the words, not the letters: L2-S1 is "left two, side one". Write 7 with a bar.'],
    ...view.bays.filter((bay) => bays.has(bay.id)).map((bay): readonly BookCell[] => [{ bold: bay.letter }, bay.name]),
    ...rolesUsed(marks).map(({ letter, says }): readonly BookCell[] => [{ bold: letter }, says]),
  ]
  return {
    name: 'Key',
    columns: [
      { head: 'word', width: 14 },
      { head: 'means', width: 80 },
    ],
    rows,
    frozenColumns: 0,
    tall: true,
  }
}
