import type { RecordFinding } from '../record-facts.js';

const formatters = new Map<string, Intl.DateTimeFormat>();

/** A moment on the wall clock of the site, with its year: "6 Jan 2031 08:30"; empty for none. */
export function when(iso: string | null, zone: string): string {
  if (iso === null) return '';
  let formatter = formatters.get(zone);
  if (!formatter) {
    formatter = new Intl.DateTimeFormat('en-US', {
      timeZone: zone,
      day: 'numeric',
      month: 'short',
      year: 'numeric',
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
    });
    formatters.set(zone, formatter);
  }
  const parts = formatter.formatToParts(Date.parse(iso));
  const part = (type: string): string => parts.find((one) => one.type === type)?.value ?? '';
  return `${part('day')} ${part('month')} ${part('year')} ${part('hour')}:${part('minute')}`;
}

/** A number with no more places than a meter shows. */
export const figure = (value: number): string => String(Math.round(value * 1000) / 1000);

/** The parts that say something, one after the other. */
export const joined = (parts: readonly (string | null | undefined | false)[], between = ', '): string =>
  parts.filter((part): part is string => typeof part === 'string' && part !== '').join(between);

/** A text as a sentence. */
export const sentence = (text: string): string =>
  /[.!?]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`;

const TRUST: Readonly<Record<string, string>> = {
  P: 'published',
  C: 'common practice',
  M: 'from memory',
  T: 'rule of the trade',
};

/** A finding whole: what was found, its limit, where that comes from, the caution, and a waiver. */
export function findingWords(finding: RecordFinding): string {
  const { text, measured, limit, source, mark, caution, waived } = finding;
  const trust = TRUST[mark] ?? mark;
  const from = source.toLowerCase().includes(trust) ? source : `${source}; ${trust}`;
  return joined(
    [
      sentence(text),
      `Found ${measured}; limit: ${limit} (${from}).`,
      waived && `Waived: ${sentence(waived)}`,
      caution && `Caution: ${sentence(caution)}`,
    ],
    ' ',
  );
}

export const JOB_STATES = {
  entered: 'entered, not started',
  running: 'running',
  done: 'done',
  cancelled: 'cancelled',
} as const;
export const PHASE_STATES = {
  waiting: 'not started',
  started: 'started',
  done: 'done',
  dropped: 'dropped',
} as const;
export const INSPECTION_STATES = {
  needed: 'to be requested',
  requested: 'requested',
  booked: 'booked',
  passed: 'passed',
  failed: 'failed',
} as const;
export const CLEARANCE_STATES = {
  needed: 'to be requested',
  requested: 'requested',
  cleared: 'given',
} as const;
export const HOOKUP_STATES = {
  waiting: 'not ready',
  ready: 'ready',
  booked: 'booked',
  done: 'connected',
} as const;
export const STAGES = {
  received: 'as received',
  laid: 'laid, before cover',
  covered: 'covered',
  beforeHookup: 'before the hookup',
} as const;
