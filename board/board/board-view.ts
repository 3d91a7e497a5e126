import { setQuery, useAddress } from '../routing/location.js';
import { addDays, dateAt, isDate, mondayOf } from '../time/zone-days.js';
import type { RowsBy } from './layout/rows.js';

/** How many weeks the board can show. */
export const WEEKS = [2, 4, 8] as const;

export type Weeks = (typeof WEEKS)[number];

/** What the board shows, as the address has it. */
export interface BoardView {
  readonly rows: RowsBy;
  readonly weeks: Weeks;
  /** First day, a Monday unless the address says otherwise. */
  readonly from: string;
  readonly asTable: boolean;
  /** Whether each kind of work has a band of its own in the weather over a job. */
  readonly limits: boolean;
  readonly change: (changes: { rows?: RowsBy; weeks?: Weeks; asTable?: boolean; limits?: boolean }) => void;
  /** Moves the days by half of what is shown: 1 to later, -1 to earlier; 0 goes to today. */
  readonly step: (direction: -1 | 0 | 1) => void;
}

/** The view in the address; without a first day it starts on the Monday of the week of `now`. */
export function useBoardView(now: number, zone: string): BoardView {
  const { query } = useAddress();
  const weeks = WEEKS.find((count) => String(count) === query.get('weeks')) ?? 2;
  const asked = query.get('from');
  const from = isDate(asked) ? asked : mondayOf(dateAt(now, zone));
  return {
    rows: query.get('rows') === 'crew' ? 'crew' : 'job',
    weeks,
    from,
    asTable: query.get('as') === 'table',
    limits: query.get('weather') === 'limits',
    change: ({ rows, weeks: count, asTable, limits }) =>
      setQuery({
        ...(rows && { rows: rows === 'crew' ? 'crew' : null }),
        ...(count && { weeks: count === 2 ? null : String(count) }),
        ...(asTable !== undefined && { as: asTable ? 'table' : null }),
        ...(limits !== undefined && { weather: limits ? 'limits' : null }),
      }),
    step: (direction) =>
      setQuery({ from: direction === 0 ? null : addDays(from, (direction * weeks * 7) / 2) }),
  };
}
