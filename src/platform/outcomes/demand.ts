import { NotFound } from './not-found.js';
import { Refused } from './refusal.js';
import { StaleRevision } from './stale-revision.js';

/** @throws Refused with NotFound when the row is missing; a row of another company must be looked up as missing. */
export function demandFound<T>(row: T | null | undefined, what: string): T {
  if (row === null || row === undefined) throw new Refused(new NotFound(what));
  return row;
}

/** @throws Refused with StaleRevision when the caller read an older revision. No revision given means no check. */
export function demandRevision(
  row: { revision: number },
  revision: number | null | undefined,
  what: string,
): void {
  if (revision !== null && revision !== undefined && revision !== row.revision) {
    throw new Refused(new StaleRevision(what, row.revision));
  }
}
