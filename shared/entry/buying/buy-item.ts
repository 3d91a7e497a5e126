import type { Source } from '../source.js';

/** Key of something that is bought. */
export type BuyKey =
  | 'footing-concrete'
  | 'base-concrete'
  | 'block'
  | 'grout'
  | 'cement'
  | 'sand'
  | 'mesh'
  | 'screws'
  | 'cable-ties'
  | 'stone'
  | 'tread-stock'
  | 'veneer-flats'
  | 'veneer-corners'
  | 'sealant'
  | 'backer-rod'
  | 'blankets'
  | 'sleeves'
  | 'heating-sets';

/** How something is sold and how much of it is lost. */
export interface BuyRule {
  readonly label: string;
  /** Unit of what is measured and of what a piece holds. */
  readonly unit: string;
  /** Lost by cutting, breaking, lapping or spilling, as a fraction. */
  readonly waste: number;
  /** How much of the unit one sold piece holds. */
  readonly holds: number;
  readonly soldAs: string;
  readonly source: Source;
}

/** A line of the buy list. */
export interface BuyLine extends BuyRule {
  readonly key: BuyKey;
  /** As measured, without waste. */
  readonly measured: number;
  /** With waste. */
  readonly needed: number;
  /** Sold pieces, whole. */
  readonly pieces: number;
}
