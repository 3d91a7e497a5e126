import { checkMeasurement } from '../../shared/entry/measurement/check-measurement.js';
import { designFindings } from '../../shared/entry/rules/design-findings.js';
import type { Prisma } from '../generated/prisma/client.js';
import { type Finding, findingOf } from '../inspections/inspections.face.js';

/** What the rules say about a job as measured. */
export function jobFindings(measurement: Prisma.JsonValue): Finding[] {
  const checked = checkMeasurement(measurement);
  return checked.ok ? designFindings(checked.measurement).map(findingOf) : [];
}
