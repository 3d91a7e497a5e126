import type { Finding } from '../../entry/rules/finding.js';
import { COMMON_PRACTICE } from '../../entry/source.js';
import { HOUR_MS, hoursBetween } from '../../units/time.js';
import { STRENGTH_CAUTION } from '../placement.js';
import type { AlarmFacts } from './cure-alarm.js';

/** Close to freezing, °F. */
const NEAR = 37;
const AHEAD_HOURS = 24;

/**
 * Before it has 500 psi the concrete was read at 37 °F or less, or is expected to freeze within a day: while there is time
 * to cover and heat it.
 */
export function nearingFreezing({ request, prediction, now }: AlarmFacts): Finding | null {
  const { firstFreeze, freezes } = prediction;
  if (firstFreeze && firstFreeze.at <= now) return null;
  const last = prediction.points.filter((point) => point.basis === 'measured').at(-1);
  const read = request.readings.length > 0 && last && last.counted <= NEAR ? last.counted : null;
  const ahead =
    freezes && freezes.at > now && freezes.at <= now + AHEAD_HOURS * HOUR_MS && freezes.basis === 'predicted';
  if (read === null && !ahead) return null;
  const wait = ahead ? Math.ceil(hoursBetween(now, freezes.at)) : 0;
  return {
    rule: 'nearing-freezing',
    ok: false,
    measured: read === null ? `expected to freeze within ${wait} h` : `${Math.round(read)} °F read`,
    limit: `above ${NEAR} °F until it has 500 psi`,
    source: COMMON_PRACTICE,
    text: 'Near freezing before 500 psi: cover it, heat it, read it again within the hour',
    caution: STRENGTH_CAUTION,
  };
}
