import type { CureAlarmKind } from '../../../shared/cure/alarms/cure-alarm.js';

/**
 * What can stand at a placement. Each is the name of the rule that found it; the order is the order of urgency in which
 * people see them.
 */
export const ALARM_KINDS = [
  'froze-early',
  'nearing-freezing',
  'cooling-fast',
  'too-cold',
  'too-warm',
  'reading-missing',
  'protection-may-come-off',
] as const satisfies readonly CureAlarmKind[];
export type AlarmKind = CureAlarmKind;

/** Kinds that cannot wait for the morning: hours decide whether the placement is lost. */
const NIGHT: readonly AlarmKind[] = ['froze-early', 'nearing-freezing'];

/** The notice that tells of an alarm. */
export function noticeOf(kind: AlarmKind): 'cure-freezing' | 'cure-alarm' | 'protection-may-come-off' {
  if (kind === 'protection-may-come-off') return kind;
  return NIGHT.includes(kind) ? 'cure-freezing' : 'cure-alarm';
}
