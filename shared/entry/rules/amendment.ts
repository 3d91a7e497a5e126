import type { Inches } from '../../units/length.js';
import type { Source } from '../source.js';

/** A limit that the place has put in the code's stead, and who says so. */
export interface Amendment {
  readonly limit: Inches;
  readonly source: Source;
}

/** The limit in force: the place's own, or the code's. */
export const inForce = (limit: Inches, source: Source, amended?: Amendment): Amendment =>
  amended ?? { limit, source };
