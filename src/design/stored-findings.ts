import { checkMeasurement } from '../../shared/entry/measurement/check-measurement.js';
import { designFindings } from '../../shared/entry/rules/design-findings.js';
import type { Finding } from '../../shared/entry/rules/finding.js';
import type { Job, Prisma } from '../generated/prisma/client.js';

/** What a rule said about a design, and why the office goes on against it where it does. */
export interface StoredFinding extends Finding {
  readonly waived?: string;
}

/** The findings of a job as they were when its measurement was taken in; of an older job as the rules find now. */
export function storedFindings({ designFindings: stored, measurement }: Job): StoredFinding[] {
  if (stored !== null) return stored as unknown as StoredFinding[];
  const checked = checkMeasurement(measurement);
  return checked.ok ? designFindings(checked.measurement) : [];
}

/** Findings as they are written into the row. */
export const findingsColumn = (findings: readonly StoredFinding[]): Prisma.InputJsonValue =>
  findings as unknown as Prisma.InputJsonValue;
