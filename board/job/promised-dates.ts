import type { JobOfPage } from './job-types.js';

/** What committing a job would promise. */
export interface PromisedDates {
  /** Phases that would be promised: they wait, and nothing is promised for them yet. */
  readonly phases: number;
  /** First start and last end of them, in milliseconds; null while any has no place in the plan. */
  readonly from: number | null;
  readonly to: number | null;
  /** Names of phases that have no place in the plan, in the order of the job. */
  readonly unplanned: readonly string[];
  /** How many of the phases lie past the forecast, where the weather is unknown. */
  readonly weatherUnknown: number;
  /** Days, begun ones counted, by which the end would miss the promised end; 0 when it is kept or none is given. */
  readonly daysLate: number;
}

const DAY = 24 * 3_600_000;

type PromisedJob = {
  readonly dueAt: string | null;
  readonly phases: readonly Pick<
    JobOfPage['phases'][number],
    'name' | 'position' | 'state' | 'planned' | 'commitment'
  >[];
};

/** Reads from a job what committing it would promise; null when there is nothing left to promise. */
export function promisedDates({ dueAt, phases }: PromisedJob): PromisedDates | null {
  const open = phases
    .filter(({ state, commitment }) => state === 'waiting' && commitment?.state !== 'held')
    .sort((a, b) => a.position - b.position);
  if (open.length === 0) return null;
  const planned = open.flatMap((phase) => phase.planned ?? []);
  const whole = planned.length === open.length;
  const to = whole ? Math.max(...planned.map(({ finishAt }) => Date.parse(finishAt))) : null;
  return {
    phases: open.length,
    from: whole ? Math.min(...planned.map(({ startAt }) => Date.parse(startAt))) : null,
    to,
    unplanned: open.filter((phase) => !phase.planned).map(({ name }) => name),
    weatherUnknown: planned.filter(({ weatherUnknown }) => weatherUnknown).length,
    daysLate: dueAt === null || to === null ? 0 : Math.max(0, Math.ceil((to - Date.parse(dueAt)) / DAY)),
  };
}
