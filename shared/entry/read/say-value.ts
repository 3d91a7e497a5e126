/** A short print of any value for a message: a long one is cut, a missing one is called nothing. */
export function sayValue(value: unknown): string {
  if (value === undefined || value === null) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'an object';
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (typeof value !== 'string') return `a ${typeof value}`;
  const text = `"${value}"`;
  return text.length > 40 ? `${text.slice(0, 37)}…` : text;
}
