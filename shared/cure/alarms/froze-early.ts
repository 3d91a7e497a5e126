import type { Finding } from '../../entry/rules/finding.js';
import { firstFreeze } from '../first-freeze.js';
import type { AlarmFacts } from './cure-alarm.js';

/** By readings, concrete froze before it had 500 psi. */
export function frozeEarly({ request, now }: AlarmFacts): Finding | null {
  const { rule: _rule, frozenAt: _at, ...finding } = firstFreeze(request.placement, request.readings, now);
  return finding.ok ? null : { rule: 'froze-early', ...finding };
}
