/** Compares ids by code unit: the same order in every place and language. */
export function compareIds(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** A copy in id order, so that the order of the input cannot show in the answer. */
export function sortedById<T extends { readonly id: string }>(list: readonly T[]): T[] {
  return [...list].sort((a, b) => compareIds(a.id, b.id));
}
