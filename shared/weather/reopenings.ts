import type { Answer } from './answer.js';
import { isBeyond } from './exceeds.js';
import type { WeatherLimit } from './weather-limit.js';

/**
 * Whether each hour would open a limit that has closed, by its `reopen` and its turn; null when the limit has neither and
 * opens as soon as it is no longer broken.
 */
export function reopenings(
  limit: WeatherLimit,
  values: readonly (number | null)[],
): readonly Answer[] | null {
  const { reopen, turningHours } = limit;
  if (!reopen && turningHours === undefined) return null;
  const fair = values.map((value) => isFair(limit, value));
  return values.map((_, i) => {
    const waited = !reopen || reopen.hours === 0 ? fair[i]! : hasWaited(fair, i, reopen);
    return turningHours === undefined ? waited : both(waited, hasTurned(limit, values, i, turningHours));
  });
}

/** Fair is beyond the reopening value, on the side away from the limit. */
function isFair({ stop, reopen, ...limit }: WeatherLimit, value: number | null): Answer {
  if (value === null) return 'unknown';
  const { value: bound, inclusive } = reopen ?? { value: limit.value, inclusive: !limit.inclusive };
  return isBeyond({ stop: stop === 'below' ? 'above' : 'below', value: bound, inclusive }, value);
}

/** Whether enough of the hours before this one were fair. Hours before the first are unknown. */
function hasWaited(
  fair: readonly Answer[],
  i: number,
  { hours, within }: { readonly hours: number; readonly within: number },
): Answer {
  let sure = 0;
  let possible = Math.max(0, within - i);
  for (let k = Math.max(0, i - within); k < i; k++) {
    if (fair[k] === true) sure += 1;
    if (fair[k] !== false) possible += 1;
  }
  if (sure >= hours) return true;
  return possible >= hours ? 'unknown' : false;
}

/** Whether the value moves back here and the limit's own value is expected within some hours. */
function hasTurned(
  limit: WeatherLimit,
  values: readonly (number | null)[],
  i: number,
  hours: number,
): Answer {
  const before = values[i - 1] ?? null;
  const now = values[i] ?? null;
  if (before === null || now === null) return 'unknown';
  if (limit.stop === 'below' ? now <= before : now >= before) return false;
  let expected: Answer = false;
  for (let k = i; k <= i + hours; k++) {
    const value = values[k] ?? null;
    if (value === null) expected = 'unknown';
    else if (limit.stop === 'below' ? value >= limit.value : value <= limit.value) return true;
  }
  return expected;
}

function both(a: Answer, b: Answer): Answer {
  if (a === false || b === false) return false;
  return a === true && b === true ? true : 'unknown';
}
