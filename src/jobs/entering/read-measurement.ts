import { checkMeasurement } from '../../../shared/entry/measurement/check-measurement.js';
import type { EntryMeasurement } from '../../../shared/entry/measurement/measurement.js';
import type { Prisma, Site } from '../../generated/prisma/client.js';
import { InvalidInput, type InputFault } from '../../platform/outcomes/invalid-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { parseJsonText } from '../json-text.js';

/** A measurement as entered and as understood. */
export interface ReadMeasurement {
  readonly entered: Prisma.InputJsonObject;
  readonly measurement: EntryMeasurement;
}

/**
 * Reads a site visit's measurements.
 *
 * @throws Refused with InvalidInput that lists every fault, a frost depth short of the site's among them.
 */
export function readMeasurement(text: string, site: Site): ReadMeasurement {
  const entered = parseJsonText('measurement', text);
  const checked = checkMeasurement(entered);
  if (!checked.ok) {
    throw new Refused(new InvalidInput(checked.faults.map(({ path, message }) => fault(path, message))));
  }
  const { measurement } = checked;
  if (measurement.frost.depth < site.frostDepthInches) {
    const message = `is ${measurement.frost.depth} in, but frost at this site goes ${site.frostDepthInches} in deep (${site.frostSource}); use the site's depth, or change the site when it is wrong`;
    throw new Refused(new InvalidInput([fault('frost.depthInches', message)]));
  }
  return { entered: entered as Prisma.InputJsonObject, measurement };
}

const fault = (path: string, message: string): InputFault => ({
  path: path ? `measurement.${path}` : 'measurement',
  message,
});
