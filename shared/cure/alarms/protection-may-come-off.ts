import type { Finding } from '../../entry/rules/finding.js';
import { degreesBetween, fahrenheit, type Fahrenheit } from '../../units/temperature.js';
import { HOUR_MS } from '../../units/time.js';
import { STRENGTH_CAUTION } from '../placement.js';
import { changesOf, protectionAt } from '../protection/protection-plan.js';
import { PROTECTION_DAYS_SOURCE } from '../rules/protection-days.js';
import { protectionRemoval } from '../rules/protection-removal.js';
import type { AlarmFacts } from './cure-alarm.js';
import { keptWarmUntil } from './kept-warm-until.js';
import { lastReading } from './last-reading.js';

/** A reading older than this says nothing about the surface now, ms. */
const FRESH_MS = 3 * HOUR_MS;

/**
 * Whether protection may come off: its days are over, the required strength is measured, and a fresh reading is within
 * 20 °F of the air. Says in `ok` whether it may, and what is still in the way; null where nothing is on.
 */
export function protectionOff({ request, prediction, now }: AlarmFacts): Finding | null {
  const { plan, placement } = request;
  const offAlready = plan.offAt !== null && now >= placement.placedAt + plan.offAt * HOUR_MS;
  const last = lastReading(request, now);
  if (offAlready || (changesOf(plan).length === 0 && !somethingOn(request))) return null;
  const air = airNow(request, now);
  const days = `protected until ${Math.round((keptWarmUntil(request) - placement.placedAt) / HOUR_MS)} h after placing`;
  const inTheWay = [
    ...(now >= keptWarmUntil(request) ? [] : ['its days of protection are not over']),
    ...(prediction.release?.basis === 'measured' ? [] : ['its required strength is not measured yet']),
    ...(last && now - last.at <= FRESH_MS ? [] : ['no reading of the last 3 h']),
    ...(air === null ? ['the air is unknown'] : []),
    ...(last && air !== null && !protectionRemoval(last.concrete, air).ok
      ? ['the surface is more than 20 °F over the air']
      : []),
  ];
  const ok = inTheWay.length === 0;
  const over =
    last && air !== null ? `${Math.round(degreesBetween(air, last.concrete))} °F over the air` : 'unknown';
  return {
    rule: 'protection-may-come-off',
    ok,
    measured: over,
    limit: `${days}, strength measured, within 20 °F of the air`,
    source: PROTECTION_DAYS_SOURCE,
    text: ok
      ? 'Protection may come off: loosen it in steps so that it cools by 5 °F an hour at most'
      : `Keep it on: ${inTheWay.join('; ')}`,
    caution: STRENGTH_CAUTION,
  };
}

function somethingOn({ plan }: AlarmFacts['request']): boolean {
  const { blanketR, inside } = protectionAt(plan, 0);
  return blanketR > 0 || inside !== null;
}

function airNow({ air }: AlarmFacts['request'], now: number): Fahrenheit | null {
  const hour = air.find(({ at }) => at <= now && now < at + HOUR_MS);
  return hour?.temperature == null ? null : fahrenheit(hour.temperature);
}
