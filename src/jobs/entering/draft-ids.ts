/** Ids of the rows that a draft's keys became. */
export class DraftIds {
  private readonly ids: ReadonlyMap<string, string>;

  constructor(
    private readonly what: string,
    rows: readonly { readonly key: string; readonly id: string }[],
  ) {
    this.ids = new Map(rows.map(({ key, id }) => [key, id]));
  }

  /** @throws Error when the draft refers to a key it does not have. */
  of(key: string): string {
    const id = this.ids.get(key);
    if (id === undefined)
      throw new Error(`The draft refers to the ${this.what} "${key}", which it does not have`);
    return id;
  }

  /** As `of`; null stays null. */
  orNull(key: string | null): string | null {
    return key === null ? null : this.of(key);
  }
}
