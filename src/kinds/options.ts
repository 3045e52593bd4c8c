/** The words of a kind family as options of a question: `{ slab: 'slab, plain', … }`. */
export const optionsOf = <K extends string>(
  kinds: { readonly [Id in K]: { readonly says: string } },
): { readonly [Id in K]: string } =>
  Object.fromEntries(Object.entries<{ readonly says: string }>(kinds).map(([id, kind]) => [id, kind.says])) as {
    readonly [Id in K]: string
  }
