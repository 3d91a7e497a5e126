import type { Finding } from '../../entry/rules/finding.js';
import { coolingFast } from './cooling-fast.js';
import type { AlarmFacts, CureAlarm, CureAlarmKind } from './cure-alarm.js';
import { frozeEarly } from './froze-early.js';
import { nearingFreezing } from './nearing-freezing.js';
import { protectionOff } from './protection-may-come-off.js';
import { readingMissing } from './reading-missing.js';
import { tooCold } from './too-cold.js';
import { tooWarm } from './too-warm.js';

/** Every alarm, in the order of urgency; a new alarm is a new file and a row here. */
const RULES: readonly (readonly [CureAlarmKind, (facts: AlarmFacts) => Finding | null])[] = [
  ['froze-early', frozeEarly],
  ['nearing-freezing', nearingFreezing],
  ['cooling-fast', coolingFast],
  ['too-cold', tooCold],
  ['too-warm', tooWarm],
  ['reading-missing', readingMissing],
  ['protection-may-come-off', mayComeOff],
];

/** What must be minded at a placement now, the most urgent first. Readings after `now` are not looked at. */
export function cureAlarms(facts: AlarmFacts): CureAlarm[] {
  return RULES.flatMap(([kind, rule]) => {
    const finding = rule(facts);
    return finding ? [{ kind, finding }] : [];
  });
}

function mayComeOff(facts: AlarmFacts): Finding | null {
  const finding = protectionOff(facts);
  return finding?.ok === true ? finding : null;
}
