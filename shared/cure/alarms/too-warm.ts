import type { Finding } from '../../entry/rules/finding.js';
import { COMMON_PRACTICE } from '../../entry/source.js';
import type { AlarmFacts } from './cure-alarm.js';
import { lastReading } from './last-reading.js';

/** Warmest that a small section should be read at while it is heated, °F. */
const WARMEST = 95;

/** The concrete was read too warm: a heater too near dries and cracks it, and what cools from there falls far. */
export function tooWarm({ request, now }: AlarmFacts): Finding | null {
  const last = lastReading(request, now);
  if (!last || last.concrete <= WARMEST) return null;
  return {
    rule: 'too-warm',
    ok: false,
    measured: `${last.concrete} °F read`,
    limit: `at most ${WARMEST} °F`,
    source: COMMON_PRACTICE,
    text: 'Too warm: move the heater away, turn it down in steps, keep the surface moist',
  };
}
