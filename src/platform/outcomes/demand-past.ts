import type { Change } from '../change/change.js';
import { InvalidInput } from './invalid-input.js';
import { Refused } from './refusal.js';

/**
 * The moment something happened on site: as given, or now. What an outbox says may lie a little ahead, and is now.
 *
 * @throws Refused with InvalidInput when it lies in the future: what has not happened cannot be recorded.
 */
export function demandPast(change: Change, at: Date | null | undefined, path = 'at'): Date {
  if (!at) return change.now;
  if (at.getTime() > change.now.getTime() + change.clockAhead) {
    const message = `${at.toISOString()} lies in the future; enter when it happened, or leave it out for now.`;
    throw new Refused(new InvalidInput([{ path, message }]));
  }
  return at < change.now ? at : change.now;
}

/** @throws Refused with InvalidInput naming one fault. */
export function refuseInput(path: string, message: string): never {
  throw new Refused(new InvalidInput([{ path, message }]));
}
