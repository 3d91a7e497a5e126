/** An object of JSON. */
export type JsonRecord = Readonly<Record<string, unknown>>;

/** Whether a value of JSON is an object. */
export const isRecord = (value: unknown): value is JsonRecord =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The member of an object that is an object itself; an empty one when it is not. */
export function recordAt(value: unknown, name: string): JsonRecord {
  const inner = isRecord(value) ? value[name] : undefined;
  return isRecord(inner) ? inner : {};
}

/** The member of an object that is a list; an empty one when it is not. */
export function listAt(value: unknown, name: string): readonly unknown[] {
  const inner = isRecord(value) ? value[name] : undefined;
  return Array.isArray(inner) ? inner : [];
}

/** The member of an object that is a text; null when it is not. */
export function textAt(value: unknown, name: string): string | null {
  const inner = isRecord(value) ? value[name] : undefined;
  return typeof inner === 'string' ? inner : null;
}
