import type { BoardPhaseFragment } from '../../api/documents.js';
import { type BoardData, type BoardRow, crewOf } from './rows.js';

/** What the board is narrowed to; null and false narrow nothing. */
export interface Filters {
  readonly crew: string | null;
  readonly site: string | null;
  /** A trade, or `wait` for what nobody works at. */
  readonly kind: string | null;
  readonly onlyConflicts: boolean;
  /** Words that must all be found in the number, name, address or phase. */
  readonly search: string;
}

export const NO_FILTERS: Filters = { crew: null, site: null, kind: null, onlyConflicts: false, search: '' };

/** Whether anything is narrowed. */
export const narrows = ({ crew, site, kind, onlyConflicts, search }: Filters): boolean =>
  crew !== null || site !== null || kind !== null || onlyConflicts || search.trim() !== '';

/** The kind of a phase as it is narrowed by: its trade, or that it waits. */
export const kindOf = ({ trade, durationKind }: BoardPhaseFragment): string =>
  durationKind === 'elapsed' || trade === null ? 'wait' : trade;

/** The kinds on a board, each once, by name; waits last. */
export function kindsOf({ phases }: BoardData): string[] {
  const kinds = [...new Set(phases.map(kindOf))].filter((kind) => kind !== 'wait').sort();
  return phases.some((phase) => kindOf(phase) === 'wait') ? [...kinds, 'wait'] : kinds;
}

/** The rows with the phases that pass; while anything is narrowed, rows without any are left out. */
export function narrowed(rows: readonly BoardRow[], board: BoardData, filters: Filters): readonly BoardRow[] {
  if (!narrows(filters)) return rows;
  const passes = testOf(board, filters);
  return rows.flatMap((row) => {
    const phases = row.phases.filter(passes);
    return phases.length > 0 ? [{ ...row, phases }] : [];
  });
}

function testOf(board: BoardData, filters: Filters): (phase: BoardPhaseFragment) => boolean {
  const { crew, site, kind, onlyConflicts, search } = filters;
  const jobs = new Map(board.jobs.map((job) => [job.id, job]));
  const against = onlyConflicts ? conflicting(board) : null;
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  return (phase) => {
    const job = jobs.get(phase.job.id);
    if (crew !== null && crewOf(phase) !== crew) return false;
    if (site !== null && job?.site.id !== site) return false;
    if (kind !== null && kindOf(phase) !== kind) return false;
    if (against && !against.phases.has(phase.id) && !against.jobs.has(phase.job.id)) return false;
    if (words.length === 0) return true;
    const text = [
      phase.job.number,
      phase.name,
      phase.area?.name,
      job?.name,
      job?.site.address,
      job?.site.town,
    ]
      .join(' ')
      .toLowerCase();
    return words.every((word) => text.includes(word));
  };
}

/** Phases that stand against something; a conflict of a whole job means all of its phases. */
function conflicting({ conflicts }: BoardData) {
  const phases = new Set(conflicts.flatMap(({ phase }) => phase?.id ?? []));
  const jobs = new Set(conflicts.flatMap(({ phase, job }) => (phase ? [] : (job?.id ?? []))));
  return { phases, jobs };
}
