/** A field as it stands, as the caller had read it, and as the caller wants it; null is "no value". */
export interface FieldIntent {
  readonly standing: string | null;
  readonly seen: string | null;
  readonly asked: string | null;
  /** Revision the row has now, and the one it was read at; null when the caller does not say. */
  readonly revision: { readonly now: number; readonly base: number | null };
}

/**
 * What becomes of an intent about one field. Nobody else's value is lost: only a field that stands as it was read, or
 * a row that was not touched since, takes the new value. Changes of other fields of the row do not matter.
 */
export function mergeField({ standing, seen, asked, revision }: FieldIntent): 'same' | 'apply' | 'conflict' {
  if (standing === asked) return 'same';
  return standing === seen || revision.now === revision.base ? 'apply' : 'conflict';
}
