import type { Answer } from './answer.js';

/**
 * Whether each hour has been broken together with those before it for more than `hours` hours. An hour that reopens
 * begins the count anew. What was before the first hour is unknown.
 */
export function lasting(
  broken: readonly Answer[],
  reopens: readonly Answer[] | null,
  hours: number,
): readonly Answer[] {
  if (hours === 0) return broken;
  let sure = 0;
  let possible = Infinity;
  return broken.map((now, i) => {
    const anew = reopens?.[i] ?? false;
    sure = now === true && anew === false ? sure + 1 : 0;
    possible = now === false || anew === true ? 0 : possible + 1;
    if (sure > hours) return true;
    return possible > hours ? 'unknown' : false;
  });
}
