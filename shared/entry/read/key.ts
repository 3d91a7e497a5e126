/** How keys that people write are spelled: short, lower case, no dots (a dot joins kind and area). */
export const KEY = {
  like: /^[a-z][a-z0-9-]{0,39}$/,
  say: 'must be a short key of small letters, digits and hyphens, starting with a letter',
};

/** Values that stand more than once in the list, each named once. */
export function repeated(values: readonly string[]): string[] {
  return [...new Set(values.filter((value, i) => values.indexOf(value) !== i))];
}
