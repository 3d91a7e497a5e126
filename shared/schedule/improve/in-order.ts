/** Ids by their keys, smallest first; equal keys in the order given. */
export function inOrder(ids: readonly string[], keys: Float64Array): string[] {
  return ids
    .map((id, i) => ({ id, key: keys[i]!, i }))
    .sort((a, b) => a.key - b.key || a.i - b.i)
    .map(({ id }) => id);
}
