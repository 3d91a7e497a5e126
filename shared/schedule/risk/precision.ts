import type { Slot } from '../slot.js';

/** 95 of a hundred: two-sided normal quantile. */
const Z = 1.959963984540054;

/** A share of samples and where the true chance lies with 95 % confidence. */
export interface Chance {
  readonly chance: number;
  readonly low: number;
  readonly high: number;
}

/** A date that a share of samples keeps, and where the true one lies with 95 % confidence; null where too many samples have no finish. */
export interface DateAt {
  readonly share: number;
  readonly at: Slot | null;
  readonly low: Slot | null;
  readonly high: Slot | null;
}

/** Wilson's score interval (Wilson 1927): it stays between 0 and 1 and is of use when no sample fails. */
export function chanceOf(hits: number, samples: number): Chance {
  const chance = hits / samples;
  const centre = (chance + (Z * Z) / (2 * samples)) / (1 + (Z * Z) / samples);
  const half =
    (Z / (1 + (Z * Z) / samples)) *
    Math.sqrt((chance * (1 - chance)) / samples + (Z * Z) / (4 * samples * samples));
  return {
    chance,
    low: Math.max(0, Math.min(chance, centre - half)),
    high: Math.min(1, Math.max(chance, centre + half)),
  };
}

/**
 * The least date that a share of samples keeps, with an interval from the order statistics: how many samples lie below the true quantile is
 * binomial (Conover 1999), here by its normal approximation.
 *
 * @param sorted finishes, least first; null for none, last
 */
export function dateAt(sorted: readonly (Slot | null)[], share: number): DateAt {
  const samples = sorted.length;
  const spread = Z * Math.sqrt(samples * share * (1 - share));
  const pick = (rank: number): Slot | null => sorted[Math.min(samples, Math.max(1, rank)) - 1] ?? null;
  return {
    share,
    at: pick(Math.ceil(share * samples - 1e-9)),
    low: pick(Math.floor(samples * share - spread)),
    high: pick(Math.ceil(samples * share + spread) + 1),
  };
}
