const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

/** When the answer to a request is expected. */
export function expectedAt(clearance: { readonly leadMinutes: number }, requestedAt: Date): Date {
  return new Date(requestedAt.getTime() + clearance.leadMinutes * MINUTE);
}

/** When a clearance lapses by its usual life, counted in full days from when it was given; null when it does not. */
export function usualLapse(clearance: { readonly lifeDays: number | null }, clearedAt: Date): Date | null {
  return clearance.lifeDays === null ? null : new Date(clearedAt.getTime() + clearance.lifeDays * DAY);
}

/** Whether a clearance that was given has run out. */
export function hasLapsed(clearance: { readonly lapsesAt: Date | null }, at: Date): boolean {
  return clearance.lapsesAt !== null && clearance.lapsesAt.getTime() <= at.getTime();
}
