import type { Finding } from '../../entry/rules/finding.js';
import { COMMON_PRACTICE } from '../../entry/source.js';
import { hoursBetween } from '../../units/time.js';
import { LONGEST_GAP_HOURS } from '../measured-history.js';
import type { AlarmFacts } from './cure-alarm.js';
import { keptWarmUntil } from './kept-warm-until.js';
import { lastReading } from './last-reading.js';

/** Longest time between readings while it can still freeze too early, h. */
const WHILE_YOUNG = 6;

/**
 * No reading for too long: 6 h until it has 500 psi by its readings, 12 h after that, until it has its strength or its
 * time of protection is over, whichever is later.
 */
export function readingMissing({ request, prediction, now }: AlarmFacts): Finding | null {
  const { firstFreeze, release } = prediction;
  const done = release?.basis === 'measured' && now >= keptWarmUntil(request);
  if (done || now < request.placement.placedAt) return null;
  const most = firstFreeze?.basis === 'measured' ? LONGEST_GAP_HOURS : WHILE_YOUNG;
  const since = hoursBetween(lastReading(request, now)?.at ?? request.placement.placedAt, now);
  if (since <= most) return null;
  return {
    rule: 'reading-missing',
    ok: false,
    measured: `${Math.floor(since)} h since the last reading`,
    limit: `a reading every ${most} h`,
    source: COMMON_PRACTICE,
    text: 'No reading: take one now; a stretch without readings counts for no strength',
  };
}
