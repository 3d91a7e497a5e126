import type { KeepOut } from '../geometry/site-plan.js';
import type { Reader } from '../read/reader.js';
import { readInches } from './read-length.js';
import { readPoint } from './read-point.js';

/** Kept free around a post or a drain unless the plan says otherwise, in. Common practice, no source. */
const USUAL_CLEARANCE = 3;

/** Reads a post or a drain: round with `centreInches` and `radiusInches`, or any shape with `outlineInches`. */
export function readKeepOut(reader: Reader): KeepOut {
  reader.object(['name', 'clearanceInches', 'centreInches', 'radiusInches', 'outlineInches']);
  const common = {
    name: reader.at('name').text(),
    clearance: reader.at('clearanceInches').numberOr(USUAL_CLEARANCE, { min: 0, max: 24, unit: 'in' }),
  };
  const outline = reader.at('outlineInches');
  if (outline.missing) {
    if (reader.at('centreInches').missing) {
      reader.fault('give centreInches and radiusInches of a round one, or outlineInches of any other');
      return { ...common, kind: 'round', centre: { x: 0, y: 0 }, radius: 1 };
    }
    return {
      ...common,
      kind: 'round',
      centre: readPoint(reader.at('centreInches')),
      radius: readInches(reader.at('radiusInches'), 0.25, 60),
    };
  }
  if (!reader.at('centreInches').missing || !reader.at('radiusInches').missing)
    reader.fault('is round or has an outline, not both; leave one out');
  return { ...common, kind: 'outline', outline: outline.list(3).map(readPoint) };
}
