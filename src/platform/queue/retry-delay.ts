/** How often a piece of work is tried before it is given up and shown as failed. */
export const MOST_ATTEMPTS = 12;

const FIRST_MILLISECONDS = 1_000;
const LONGEST_MILLISECONDS = 15 * 60_000;

/** Milliseconds to wait after the given number of failed attempts: doubling from a second to a quarter of an hour. */
export function retryDelay(attemptsMade: number): number {
  return Math.min(FIRST_MILLISECONDS * 2 ** Math.max(0, attemptsMade - 1), LONGEST_MILLISECONDS);
}
