import { published, type Source } from '../../entry/source.js';

/**
 * How much of the surface is kept bare while snow falls: none (the snow lies and melts from below), half of it, or all.
 * Source: HPAC (published), classes of snow melting.
 */
export const FREE_AREA = { I: 0, II: 0.5, III: 1 } as const;

/** Class of a snow-melting surface: I for walks and drives of houses, II for shops, III for ramps and helipads. */
export type FreeAreaClass = keyof typeof FREE_AREA;

/** Where the classes come from. */
export const FREE_AREA_SOURCE: Source = published('HPAC, classes of snow melting by free-area ratio');

/** The free-area ratio of a class. Throws on a class that there is not. */
export function freeAreaRatio(word: string): number {
  if (!Object.hasOwn(FREE_AREA, word))
    throw new RangeError(
      `there is no class "${word}"; use I (house), II (shop) or III (kept bare at all times)`,
    );
  return FREE_AREA[word as FreeAreaClass];
}
