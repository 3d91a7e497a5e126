import { published, type Source } from '../../entry/source.js';
import { celsiusDegrees, type CelsiusDegrees } from '../../units/temperature.js';

/** Where the table comes from. */
export const LARGEST_DIFFERENCE_SOURCE: Source = published(
  'CSA A23.1 via the Cement Association of Canada handbook, ch. 17: wind up to 25 km/h',
);

const RATIOS = [0, 3, 5, 7, 20] as const;
const ROWS: readonly { readonly metres: number; readonly degrees: readonly number[] }[] = [
  { metres: 0.3, degrees: [29, 22, 19, 17, 12] },
  { metres: 0.6, degrees: [22, 18, 16, 15, 12] },
];
const SMALLEST = celsiusDegrees(12);

/**
 * Largest difference between concrete and air when protection comes off, °C, by thickness in metres and length over
 * height. Between two entries the stricter; beyond the table, and in more wind, its strictest.
 */
export function largestDifference(
  thickness: number,
  lengthToHeight: number,
  windKilometresPerHour: number,
): CelsiusDegrees {
  if (!(thickness > 0) || !(lengthToHeight >= 0)) {
    throw new RangeError('Give a thickness over 0 m and a length over height of 0 or more');
  }
  const row = ROWS.find(({ metres }) => thickness <= metres);
  const column = RATIOS.findIndex((ratio) => lengthToHeight <= ratio);
  const calm = windKilometresPerHour <= 25;
  const degrees = calm ? row?.degrees[column < 0 ? RATIOS.length - 1 : column] : undefined;
  return degrees === undefined ? SMALLEST : celsiusDegrees(degrees);
}
