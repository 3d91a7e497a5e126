import { checkMeasurement } from '../../../shared/entry/measurement/check-measurement.js';
import { checkTyped } from './check-typed.js';
import { ticked, type Values } from './field.js';
import { AREAS, askedFields, JOB_FIELDS } from './job-fields.js';
import { measuredSheet, sheetPaths, type SiteFrost } from './measured-sheet.js';
import { type PlacedFaults, placeFaults } from './place-faults.js';

/** The labels of the job form by field, for sentences about them. */
export const jobLabels = (values: Values): Record<string, string> => ({
  ...Object.fromEntries([...JOB_FIELDS, ...askedFields(values)].map(({ name, label }) => [name, label])),
  site: 'Site',
  priority: 'Served',
  due: 'Promised end',
  drawn: 'The drawn plan',
});

/** Everything that is wrong with a job as typed and can be said before it is sent, by the same check as the service's. */
export function checkJob(values: Values, site: SiteFrost | null): PlacedFaults {
  const at: Record<string, string> = { ...checkTyped([...JOB_FIELDS, ...askedFields(values)], values) };
  if (!site) at['site'] = 'Choose the site, or enter it first.';
  if (!AREAS.some(({ has }) => ticked(values, has)))
    at['hasLanding'] = 'Tick what is built: landing, steps or walk.';
  const [sill, drop] = ['sill', 'doorDrop'].map((name) => (values[name] ?? '').trim());
  if (ticked(values, 'hasLanding') && Boolean(sill) !== Boolean(drop))
    at[sill ? 'doorDrop' : 'sill'] = 'Give both heights at the door, or neither.';
  if (Object.keys(at).length > 0 || !site) return { at, rest: [] };
  const checked = checkMeasurement(measuredSheet(values, site));
  if (checked.ok) return { at: {}, rest: [] };
  const faults = checked.faults.map(({ path, message }) => ({ path: `measurement.${path}`, message }));
  return placeFaults(faults, sheetPaths(values), jobLabels(values));
}
