/** One part of a document, in the order of reading; what it looks like on paper is not its matter. */
export type Block =
  | { readonly kind: 'section'; readonly text: string }
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string; readonly tone?: 'caution' | 'small' }
  | { readonly kind: 'pairs'; readonly rows: readonly (readonly [name: string, value: string])[] }
  | Table
  | Figure
  | { readonly kind: 'photo'; readonly photoId: string; readonly words: string };

/** A table; `shares` says how the width is divided. */
export interface Table {
  readonly kind: 'table';
  readonly heads: readonly string[];
  readonly shares: readonly number[];
  readonly rows: readonly (readonly string[])[];
  /** What is said where there are no rows. */
  readonly none: string;
}

/** A drawing in inches of paper, which is never scaled. */
export interface Figure {
  readonly kind: 'figure';
  readonly title: string;
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** It gets a page of its own, as a sheet to measure from. */
  readonly sheet: boolean;
}

/** A document as it is read. */
export interface RecordDocument {
  readonly title: string;
  /** Stands at the head of every page. */
  readonly head: string;
  readonly subject: string;
  readonly blocks: readonly Block[];
}
