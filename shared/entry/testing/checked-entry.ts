import { checkMeasurement } from '../measurement/check-measurement.js';
import type { EntryMeasurement } from '../measurement/measurement.js';
import { describeFaults } from '../read/fault.js';
import { entryFixture, type Loose } from './entry-fixture.js';

/** The fixture, changed by a test and then checked; throws with the faults when the change broke it. */
export function checkedEntry(change: (entry: Loose) => void = () => undefined): EntryMeasurement {
  const entry: unknown = entryFixture();
  change(entry);
  const check = checkMeasurement(entry);
  if (!check.ok) throw new Error(describeFaults(check.faults));
  return check.measurement;
}
