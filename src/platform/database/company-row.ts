import type { Change } from '../change/change.js';
import { rowIds } from '../row-id.js';

/** Where-clause for one row of the acting company; a malformed id finds nothing, like a missing one. */
export function companyRow(change: Change, id: string): { companyId: string; id: { in: string[] } } {
  return { companyId: change.ctx.companyId, id: { in: rowIds([id]) } };
}
