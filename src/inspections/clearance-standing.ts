import type { Clearance } from '../generated/prisma/client.js';

/**
 * What keeps a clearance from standing at a moment, as a sentence that says what to do; null when it stands. A
 * mark-out must be valid on the day of the dig, so a lapsed one counts as missing.
 */
export function clearanceFault(clearance: Clearance, at: Date): string | null {
  const { state, title, clearedAt, lapsesAt } = clearance;
  if (state === 'needed')
    return `${title} has not been asked for; request it and record it when it is given.`;
  if (state === 'requested' || !clearedAt)
    return `${title} is requested but not given; record it when it is given.`;
  if (clearedAt.getTime() > at.getTime())
    return `${title} was given only at ${clearedAt.toISOString()}, after that.`;
  if (lapsesAt && lapsesAt.getTime() <= at.getTime())
    return `${title} lapsed at ${lapsesAt.toISOString()}; request a new one before work goes on.`;
  return null;
}
