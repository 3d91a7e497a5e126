import type { Finding } from '../../entry/rules/finding.js';
import type { EpochMs } from '../../units/time.js';
import type { CurePrediction, CureRequest } from '../prediction/cure-prediction.js';

/** What can stand at a placement; the name of the rule that finds it. */
export type CureAlarmKind =
  | 'froze-early'
  | 'nearing-freezing'
  | 'cooling-fast'
  | 'too-cold'
  | 'too-warm'
  | 'reading-missing'
  | 'protection-may-come-off';

/** Something that people must mind at a placement, or that they may do. */
export interface CureAlarm {
  readonly kind: CureAlarmKind;
  readonly finding: Finding;
}

/** What the alarms of a placement are found from. */
export interface AlarmFacts {
  readonly request: CureRequest;
  readonly prediction: CurePrediction;
  readonly now: EpochMs;
}
