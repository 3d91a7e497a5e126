import type { Finding } from '../entry/rules/finding.js';
import type { ReadingStage } from '../entry/template/words.js';
import type { CableReading } from './cable-reading.js';
import { insulationFinding } from './insulation-finding.js';
import { insulationTrend } from './insulation-trend.js';
import type { HeatingLabel } from './label.js';
import { resistanceFinding } from './resistance-finding.js';
import { resistanceTrend } from './resistance-trend.js';

/** What a reading says about its heating set. */
export interface ReadingJudgement {
  readonly ok: boolean;
  /** Resistance, then insulation; each with measured value, limit, source and caution. */
  readonly findings: readonly Finding[];
  /** What is wrong, in words; empty when the reading is accepted. */
  readonly reasons: readonly string[];
  /** Things to look at although the reading is accepted. */
  readonly warnings: readonly string[];
  /** What may not be done until a later reading at this stage is accepted; null when accepted. */
  readonly forbids: string | null;
}

const FORBIDS: Record<ReadingStage, string> = {
  received: 'laying the cable',
  laid: 'covering the cable',
  covered: 'finishing the stone over it and hooking the set up',
  beforeHookup: 'hooking the set up',
};

/** Holds a reading against the label, and against the readings before it. */
export function judgeReading(
  label: HeatingLabel,
  reading: CableReading,
  earlier: readonly CableReading[] = [],
): ReadingJudgement {
  const findings = [resistanceFinding(label, reading), insulationFinding(label, reading)];
  const ok = findings.every((finding) => finding.ok);
  const trends = [insulationTrend(reading, earlier), resistanceTrend(label, reading, earlier)];
  return {
    ok,
    findings,
    reasons: findings.filter((finding) => !finding.ok).map((finding) => finding.text),
    warnings: trends.filter((trend) => trend !== undefined),
    forbids: ok ? null : FORBIDS[reading.stage],
  };
}
