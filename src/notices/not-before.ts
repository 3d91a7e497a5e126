import { type QuietHours, quietUntil } from './quiet-hours.js';

/**
 * When a message may be sent at the earliest; null means now. Urgent ones do not wait, and none waits past the moment
 * at which it stops being useful.
 */
export function notBefore(
  recipient: QuietHours,
  now: Date,
  { urgent, usefulUntil }: { urgent: boolean; usefulUntil: Date | null },
): Date | null {
  if (urgent) return null;
  const until = quietUntil(recipient, now);
  return until && usefulUntil && until >= usefulUntil ? null : until;
}
