import type { BoardPhaseFragment, BoardQuery } from '../../api/documents.js';

export type BoardData = BoardQuery['board'];
export type BoardJob = BoardData['jobs'][number];

/** What the rows of the board are. */
export type RowsBy = 'job' | 'crew';

/** One row: its head and the phases that belong in it. */
export interface BoardRow {
  readonly id: string;
  readonly title: string;
  readonly note: string;
  /** The job of the row, when rows are jobs. */
  readonly job: BoardJob | null;
  readonly phases: readonly BoardPhaseFragment[];
}

/** Keys of the weather limits that the work still to do in a row has, each once, in the order of the phases. */
export function weatherKindsOf({ phases }: BoardRow): string[] {
  const open = phases.filter(({ state }) => state === 'waiting' || state === 'started');
  return [...new Set(open.flatMap(({ weatherLimitKey }) => weatherLimitKey ?? []))];
}

const NO_CREW = 'none';

/** A row for each job, in the order of the service. Dropped phases are not drawn. */
export function rowsByJob(board: BoardData): BoardRow[] {
  const phases = grouped(board, ({ job }) => job.id);
  return board.jobs.map((job) => ({
    id: job.id,
    title: job.name,
    note: `${job.site.address}, ${job.site.town}`,
    job,
    phases: phases.get(job.id) ?? [],
  }));
}

/** A row for each crew, and a last one for waits and other phases that no crew works. */
export function rowsByCrew(board: BoardData): BoardRow[] {
  const phases = grouped(board, crewOf);
  const rows = board.crews.map((crew) => ({
    id: crew.id,
    title: crew.name,
    note: crew.trades.join(', '),
    job: null,
    phases: phases.get(crew.id) ?? [],
  }));
  const rest = phases.get(NO_CREW) ?? [];
  return rest.length === 0
    ? rows
    : [...rows, { id: NO_CREW, title: 'No crew', note: 'waits and visits', job: null, phases: rest }];
}

/** Who works a phase: as it happened, else as planned, else as committed. */
export function crewOf(phase: BoardPhaseFragment): string {
  return phase.actualCrew?.id ?? phase.planned?.crew?.id ?? phase.commitment?.crew?.id ?? NO_CREW;
}

/** The phases that are drawn, by a name that each has. */
function grouped(
  { phases }: BoardData,
  nameOf: (phase: BoardPhaseFragment) => string,
): ReadonlyMap<string, readonly BoardPhaseFragment[]> {
  const groups = new Map<string, BoardPhaseFragment[]>();
  for (const phase of phases) {
    if (phase.state === 'dropped') continue;
    const name = nameOf(phase);
    const group = groups.get(name);
    if (group) group.push(phase);
    else groups.set(name, [phase]);
  }
  return groups;
}
