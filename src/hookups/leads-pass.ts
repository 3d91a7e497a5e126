import { sleeveWords } from '../../shared/entry/geometry/sleeve-words.js';
import { checkMeasurement } from '../../shared/entry/measurement/check-measurement.js';
import type { Job } from '../generated/prisma/client.js';

/** Where the leads of a job come through the wall; null where no plan was drawn. */
export function leadsPass({ measurement }: Pick<Job, 'measurement'>): string | null {
  const checked = checkMeasurement(measurement);
  const plan = checked.ok ? checked.measurement.sitePlan : null;
  return plan ? sleeveWords(plan) : null;
}
