import { addDays, daysBetween } from '../../time/zone-days.js';
import type { Span } from './spans.js';

/** The days that are asked for and drawn: more than are in view, so that there is something to scroll to. */
export interface Sheet {
  /** First day. */
  readonly from: string;
  readonly days: number;
}

/** Most days that the service answers for at once, less a margin for clock changes. */
const MOST_DAYS = 392;

/** How many days a sheet has for a span in view. */
function sheetDays(span: Span): number {
  if (span === 1) return 15;
  if (span === 3) return 29;
  if (span <= 14) return 56;
  if (span <= 28) return 112;
  return span <= 91 ? 273 : MOST_DAYS;
}

/** The sheet around a first day in view: the one before while it still has that and something on either side, else a new one with the view in its middle. */
export function sheetFor(from: string, span: Span, before: Sheet | null): Sheet {
  const days = sheetDays(span);
  if (before?.days === days) {
    const ahead = daysBetween(before.from, from);
    const rest = days - ahead - span;
    const margin = Math.floor((days - span) / 8);
    if (ahead >= margin && rest >= margin) return before;
  }
  return { from: addDays(from, -Math.floor((days - span) / 2)), days };
}
