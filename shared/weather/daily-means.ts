/** Hours of a day: any 24 of them, so that a clock change makes no day longer. */
export const DAY_HOURS = 24;

/**
 * The mean daily value of each hour: half of the highest and the lowest in the 24 hours that end with it, or begin with
 * it. Null where one of the 24 is unknown or lies outside. Source: TMS 602 (from memory) and ACI 306.1-90 take the mean
 * of the day's extremes; theirs runs from midnight, this one over any 24 hours.
 */
export function dailyMeans(
  values: readonly (number | null)[],
  side: 'before' | 'after',
): readonly (number | null)[] {
  return values.map((_, i) => {
    const from = side === 'before' ? i - DAY_HOURS + 1 : i;
    if (from < 0 || from + DAY_HOURS > values.length) return null;
    let low = Infinity;
    let high = -Infinity;
    for (let k = from; k < from + DAY_HOURS; k++) {
      const value = values[k]!;
      if (value === null) return null;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return (low + high) / 2;
  });
}
