const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;

/** Whether a text can be the id of a row; anything else names no row and is answered like a missing one. */
export function isRowId(text: string): boolean {
  return UUID.test(text);
}

/** The ids of a list that can name rows. */
export function rowIds(texts: readonly string[]): string[] {
  return texts.filter(isRowId);
}
