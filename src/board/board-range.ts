import { CodedError } from '../platform/graphql/coded-error.js';

const DAY = 24 * 60 * 60 * 1000;

/** Longest stretch a board may be asked for. */
export const MOST_DAYS = 400;

/** A stretch of time; `to` does not belong to it. */
export interface BoardRange {
  readonly from: Date;
  readonly to: Date;
}

/** The stretch asked for. @throws CodedError when it is empty or too long to be answered at once. */
export function boardRange(from: Date, to: Date): BoardRange {
  if (!(from.getTime() < to.getTime()))
    throw new CodedError('bad-request', 'to must be after from; ask for at least a moment.');
  if (to.getTime() - from.getTime() > MOST_DAYS * DAY)
    throw new CodedError(
      'bad-request',
      `A board spans at most ${MOST_DAYS} days; ask for a shorter stretch.`,
    );
  return { from, to };
}
