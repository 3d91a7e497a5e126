import { localTime } from '../../platform/local-time.js';
import type { HoldTrigger } from './site-print.js';

/** What the words about a hold need. */
export interface HoldOccasion {
  readonly trigger: HoldTrigger;
  readonly issuedAt: Date;
  readonly zone: string;
  /** Protection that stands now and did not when the hold was opened. */
  readonly added: readonly string[];
  readonly live: boolean;
}

const OPENED: Readonly<Record<Exclude<HoldTrigger, 'forecast'>, string>> = {
  limits: 'The limits were changed.',
  work: 'The plan of the work, or its protection, was changed.',
  time: 'The work has come within 72 hours.',
};

/** What brought a hold about. */
export function openedFor({ trigger, issuedAt, zone }: Pick<HoldOccasion, 'trigger' | 'issuedAt' | 'zone'>) {
  return trigger === 'forecast' ? `The forecast issued ${localTime(issuedAt, zone)}.` : OPENED[trigger];
}

/** Why a hold of the forecast was lifted. */
export function liftReason({ trigger, issuedAt, zone, added, live }: HoldOccasion): string {
  if (!live) return 'The work is done or dropped; there is nothing left to hold.';
  if (trigger === 'forecast')
    return `The forecast issued ${localTime(issuedAt, zone)} no longer breaks the limit.`;
  if (trigger === 'limits') return 'The limits were changed and are no longer broken.';
  if (added.length > 0)
    return `The work is under protection now (${added.join(', ')}), which lifts the limit.`;
  return 'The limit is no longer broken.';
}

/** Why a hold ended in another. */
export const JOINED = 'It became one with the hold beside it.';
