import type { Source } from '../source.js';

/**
 * What a measured value is held against. Members given together hold together; none of them given means that
 * any value of the right kind will do.
 */
export interface ItemLimit {
  /** The answer must be yes. */
  readonly confirmed?: true;
  readonly atLeast?: number;
  readonly atMost?: number;
  /** Largest less smallest of the values. */
  readonly equalWithin?: number;
}

/** One thing to measure or to confirm at a hold point. */
export interface HoldPointItem {
  readonly id: string;
  readonly label: string;
  /** Unit of the value as typed in; null for yes and no. */
  readonly unit: string | null;
  /** Several values are asked for, one at each footing, riser or run. */
  readonly many?: true;
  readonly limit: ItemLimit;
  readonly required: boolean;
  readonly source: Source;
}

/** What a person enters for an item: yes or no, one value, or the values taken. */
export type MeasuredValue = boolean | number | readonly number[];
