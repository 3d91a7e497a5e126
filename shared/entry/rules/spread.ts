/** Float noise that a tape could never show, forgiven where a value stands exactly on its limit. */
export const HAIR = 1e-9;

/** Largest less smallest; 0 for one value or none. */
export const spread = (values: readonly number[]): number =>
  values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);
