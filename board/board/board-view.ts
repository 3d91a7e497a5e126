import { setQuery, useAddress } from '../routing/location.js';
import { addDays, dateAt, isDate, mondayOf } from '../time/zone-days.js';
import type { Filters } from './layout/filters.js';
import type { RowsBy } from './layout/rows.js';
import { type Span, spanOf, usualSpan } from './layout/spans.js';

/** Width of the window under which the board is drawn for a phone. */
export const NARROW = 640;

/** What can be changed of a view. */
export interface ViewChanges extends Partial<Filters> {
  readonly rows?: RowsBy;
  readonly span?: Span;
  readonly from?: string;
  readonly asTable?: boolean;
  readonly limits?: boolean;
}

/** What the board shows, as the address has it. */
export interface BoardView {
  readonly rows: RowsBy;
  /** How many days are side by side. */
  readonly span: Span;
  /** First day in view, a Monday unless the address says otherwise. */
  readonly from: string;
  readonly asTable: boolean;
  /** Whether each kind of work has a band of its own in the weather over a job. */
  readonly limits: boolean;
  readonly filters: Filters;
  /** Whether everything is drawn, in sight or not: for measuring. */
  readonly whole: boolean;
  readonly change: (changes: ViewChanges) => void;
  /** Moves the days by half of what is shown, a day at least: 1 to later, -1 to earlier; 0 goes to today. */
  readonly step: (direction: -1 | 0 | 1) => void;
}

/** The view in the address; without a first day it starts on the Monday of the week of `now`, or today when less is shown. */
export function useBoardView(now: number, zone: string): BoardView {
  const { query } = useAddress();
  const usual = usualSpan(matchMedia(`(max-width: ${NARROW - 1}px)`).matches);
  const span = spanOf(query.get('days')) ?? usual;
  const asked = query.get('from');
  const today = dateAt(now, zone);
  const from = isDate(asked) ? asked : span < 7 ? today : mondayOf(today);
  return {
    rows: query.get('rows') === 'crew' ? 'crew' : 'job',
    span,
    from,
    asTable: query.get('as') === 'table',
    limits: query.get('weather') === 'limits',
    filters: {
      crew: query.get('crew'),
      site: query.get('site'),
      kind: query.get('kind'),
      onlyConflicts: query.get('only') === 'conflicts',
      search: query.get('search') ?? '',
    },
    whole: query.get('draw') === 'whole',
    change: (changes) => setQuery(queryOf(changes, usual)),
    step: (direction) =>
      setQuery({
        from: direction === 0 ? null : addDays(from, direction * Math.max(1, Math.floor(span / 2))),
      }),
  };
}

/** Changes as parts of the address; what is usual is left out of it. */
function queryOf(changes: ViewChanges, usual: Span): Record<string, string | null> {
  const { rows, span, from, asTable, limits, crew, site, kind, onlyConflicts, search } = changes;
  return {
    ...(rows && { rows: rows === 'crew' ? 'crew' : null }),
    ...(span && { days: span === usual ? null : String(span) }),
    ...(from && { from }),
    ...(asTable !== undefined && { as: asTable ? 'table' : null }),
    ...(limits !== undefined && { weather: limits ? 'limits' : null }),
    ...(crew !== undefined && { crew: crew || null }),
    ...(site !== undefined && { site: site || null }),
    ...(kind !== undefined && { kind: kind || null }),
    ...(onlyConflicts !== undefined && { only: onlyConflicts ? 'conflicts' : null }),
    ...(search !== undefined && { search: search || null }),
  };
}
