import type { Finding } from '../../entry/rules/finding.js';
import { HOUR_MS } from '../../units/time.js';
import { coolingRate } from '../rules/cooling-rate.js';
import { sectionLimits } from '../rules/section-table.js';
import type { AlarmFacts } from './cure-alarm.js';

/** By the readings of the last day, the concrete cools faster than it may. */
export function coolingFast({ request, now }: AlarmFacts): Finding | null {
  const { placement, section, readings } = request;
  const history = readings
    .filter(({ at }) => at >= placement.placedAt && at <= now && at > now - 24 * HOUR_MS)
    .map(({ at, concrete }) => ({ at, temperature: concrete }))
    .sort((a, b) => a.at - b.at);
  const finding = coolingRate(history, sectionLimits(section.thickness).drop);
  return finding.ok ? null : { ...finding, rule: 'cooling-fast' };
}
