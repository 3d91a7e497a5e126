import { epochMs, HOUR_MS } from '../../units/time.js';
import { readInstant } from '../read-instant.js';
import type { Stretch } from '../stretch.js';

const DURATION = /^P(?:(\d+)D)?(?:T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)S)?)?$/;

/** An ISO 8601 duration in milliseconds, as `PT6H` or `P1DT7H`; null when it is none, or one of months or years. */
export function readDuration(text: string): number | null {
  const found = DURATION.exec(text);
  const parts = found?.slice(1) ?? [];
  if (!found || parts.every((part) => part === undefined)) return null;
  const [days = 0, hours = 0, minutes = 0, seconds = 0] = parts.map((part) => Number(part ?? 0));
  return (days * 24 + hours) * HOUR_MS + minutes * 60_000 + seconds * 1000;
}

/** An ISO 8601 interval of a start and a duration, as `2026-01-14T06:00:00+00:00/PT3H`; null when it is none. */
export function readInterval(text: string): Stretch | null {
  const [start = '', duration = '', ...rest] = text.split('/');
  const from = readInstant(start);
  const length = readDuration(duration);
  if (from === null || length === null || length <= 0 || rest.length > 0) return null;
  return { from, to: epochMs(from + length) };
}
