import { epochMs, type EpochMs } from '../units/time.js';

const SHAPE = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,3})?)?(Z|[+-]\d{2}:\d{2})$/;

/**
 * An instant written with its offset, as in `2026-01-14T06:00-05:00`. A time without an offset is refused: on the
 * day of a clock change it could be two instants. So are days that do not exist.
 */
export function readInstant(text: string): EpochMs | null {
  if (!SHAPE.test(text)) return null;
  const at = Date.parse(text);
  if (Number.isNaN(at)) return null;
  const [year = 0, month = 0, day = 0] = text.slice(0, 10).split('-').map(Number);
  const lastDay = new Date(Date.UTC(year, month, 0)).getUTCDate();
  return day <= lastDay ? epochMs(at) : null;
}
