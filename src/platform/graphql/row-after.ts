import { isRowId } from '../row-id.js';
import { CodedError } from './coded-error.js';

/**
 * The condition that goes on after a page's cursor, for lists in ascending order of a UUID id.
 *
 * @throws CodedError when the cursor belongs to another kind of list.
 */
export function rowAfter(after: string | null): { id?: { gt: string } } {
  if (after === null) return {};
  if (!isRowId(after))
    throw new CodedError(
      'bad-request',
      'after is not a cursor of this list; use endCursor of the page before.',
    );
  return { id: { gt: after } };
}
