import { checkMeasurement } from '../../shared/entry/measurement/check-measurement.js';
import { designFindings } from '../../shared/entry/rules/design-findings.js';
import type { Finding } from '../../shared/entry/rules/finding.js';
import type { Job, Prisma } from '../generated/prisma/client.js';

/** Why the office goes on against a broken rule, who decided it and when (ISO 8601); older waivers say only why. */
export interface StoredWaiver {
  readonly waived?: string;
  readonly waivedById?: string;
  readonly waivedAt?: string;
}

/** What a rule said about a design, and the waiver where the office goes on against it. */
export type StoredFinding = Finding & StoredWaiver;

/** The findings of a job as they were when its measurement was taken in; of an older job as the rules find now. */
export function storedFindings({ designFindings: stored, measurement }: Job): StoredFinding[] {
  if (stored !== null) return stored as unknown as StoredFinding[];
  const checked = checkMeasurement(measurement);
  return checked.ok ? designFindings(checked.measurement) : [];
}

/** Findings as they are written into the row. */
export const findingsColumn = (findings: readonly StoredFinding[]): Prisma.InputJsonValue =>
  findings as unknown as Prisma.InputJsonValue;
