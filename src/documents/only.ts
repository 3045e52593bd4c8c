/** A copy with the listed fields and no others: a field added later stays out until somebody lists it. */
export function only<T extends object, K extends keyof T>(from: T, fields: readonly K[]): Pick<T, K> {
  const kept = fields.filter((field) => field in from).map((field) => [field, from[field]])
  return Object.fromEntries(kept) as Pick<T, K>
}
