import type { Finding } from '../../entry/rules/finding.js';
import { sectionLimits, SECTION_TABLE_SOURCE } from '../rules/section-table.js';
import type { AlarmFacts } from './cure-alarm.js';
import { keptWarmUntil } from './kept-warm-until.js';
import { lastReading } from './last-reading.js';

/** Within its protection time the concrete was read colder than it must be kept. */
export function tooCold({ request, now }: AlarmFacts): Finding | null {
  const last = lastReading(request, now);
  const { placed } = sectionLimits(request.section.thickness);
  if (!last || last.at > keptWarmUntil(request) || last.concrete >= placed) return null;
  return {
    rule: 'too-cold',
    ok: false,
    measured: `${last.concrete} °F read`,
    limit: `kept at ${placed} °F or more while it is protected`,
    source: SECTION_TABLE_SOURCE,
    text: 'Colder than it must be kept: add blankets or heat; its time of protection begins to be too short',
  };
}
