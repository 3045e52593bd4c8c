/** Each editable text of `templates/` and the names it may use. Add a text = one line here and the file. */
export const TEMPLATES = {
  'start-here.md': ['job', 'revision', 'finish'],
  'install-intro.md': ['job', 'days', 'note'],
  'cautions.md': ['spraying', 'leadPaint', 'electricity', 'fire', 'heavy', 'shelves'],
  'touch-up-how.md': ['passes', 'unit', 'tapeDays'],
  'drawings-note.md': ['unit'],
  'request.md': ['item', 'job', 'neededBy', 'orderBy', 'area', 'unit'],
  'quote.md': ['client', 'site', 'valid', 'bought', 'wallColour', 'currency'],
  'care.md': ['paint', 'masonry', 'shelves'],
} as const satisfies Readonly<Record<string, readonly string[]>>

export type TemplateName = keyof typeof TEMPLATES

/** What a text is given: a word for each of its names; false = not there (`{% if name %}`). */
export type TemplateValues<N extends TemplateName> = Readonly<Record<(typeof TEMPLATES)[N][number], string | false>>
