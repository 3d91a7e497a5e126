import type { SitePlan } from '../geometry/site-plan.js';
import type { Reader } from '../read/reader.js';
import type { MeasuredArea } from './area.js';
import { checkSitePlan } from './check-site-plan.js';
import { readLine, readPoint } from './read-point.js';
import { readSurface } from './read-surface.js';

/**
 * Reads how the areas lie to each other: the wall, the sleeve, and every area from the door outwards, in inches. Null where
 * no plan was drawn: then nothing is laid out and nothing is said about it.
 */
export function readSitePlan(reader: Reader, areas: readonly MeasuredArea[]): SitePlan | null {
  if (reader.missing) return null;
  const before = reader.faults.length;
  reader.object(['wallInches', 'penetrationInches', 'surfaces']);
  const plan: SitePlan = {
    wall: readLine(reader.at('wallInches')),
    penetration: readPoint(reader.at('penetrationInches')),
    surfaces: reader
      .at('surfaces')
      .list(1)
      .flatMap((surface) => readSurface(surface, areas) ?? []),
  };
  if (reader.faults.length === before)
    reader.faults.push(
      ...checkSitePlan(plan, areas).map(({ path, message }) => ({ path: `${reader.path}.${path}`, message })),
    );
  return reader.faults.length === before ? plan : null;
}
