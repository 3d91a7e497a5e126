/** The members of a value that are given: those that are undefined are left out, so that an update does not touch them. */
export function given<T extends object>(value: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(value).filter(([, inner]) => inner !== undefined)) as never;
}
