import type { Link, Phase } from '../../../shared/schedule/model.js';
import type { DaySheet } from './day-sheet.js';

/**
 * The earliest instant a link allows, counted from its predecessor's point in the hours of its successor: one slot after the other, on for a
 * lag and back for a lead. Infinity when the lag outruns the horizon, −Infinity when the lead goes back before all open time.
 */
export function earliestBy(
  link: Link,
  from: number,
  calendarId: string | undefined,
  sheet: DaySheet,
  horizon: number,
): number {
  if (link.lagIn === 'elapsed' || link.lag === 0) return from + link.lag;
  const isOpen = sheet.openBy(calendarId);
  let left = Math.abs(link.lag);
  let t = from;
  if (link.lag > 0) {
    for (; left > 0; t++) {
      if (t >= horizon) return Infinity;
      if (isOpen(t)) left--;
    }
    return t;
  }
  if (calendarId === undefined) return from + link.lag;
  for (; t > 0; t--) if (isOpen(t - 1) && left-- === 0) return t;
  return -Infinity;
}

/** Which end of a phase a link speaks of. */
export function pointOf(
  link: Link,
  side: 'from' | 'to',
  { start, finish }: { readonly start: number; readonly finish: number },
): number {
  if (side === 'from') return link.kind === 'FS' || link.kind === 'FF' ? finish : start;
  return link.kind === 'FF' || link.kind === 'SF' ? finish : start;
}

/** When dated gates let a phase start; undated ones are taken for open. */
export function gateOf(phase: Phase): number {
  const dates = (phase.gates ?? []).map((gate) => {
    if (gate.kind === 'notBefore') return gate.at;
    if (gate.kind === 'clearance') return gate.earliest ?? -Infinity;
    return gate.kind === 'cure' ? (gate.expected ?? -Infinity) : -Infinity;
  });
  return Math.max(-Infinity, ...dates);
}
