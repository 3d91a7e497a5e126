import type { WhatIf } from '../../shared/schedule/what-if/what-if.js';
import type { WithoutProtectionQuery } from '../api/documents.js';
import type { BoardData } from '../board/layout/rows.js';

type Supposed = Extract<WithoutProtectionQuery['whatIf'], { __typename: 'Supposed' }>;

/** What a change would do, wherever it was worked out: moments in milliseconds since 1970. */
export interface Shifts {
  /** How many phases move. */
  readonly moved: number;
  readonly conflictsCome: number;
  readonly conflictsGo: number;
  /** What could no longer be had, in words, where the words are known. */
  readonly words: readonly string[];
  readonly jobs: readonly JobShift[];
}

/** One job's end before and after; null without one. */
export interface JobShift {
  readonly key: string;
  readonly name: string;
  readonly before: number | null;
  readonly after: number | null;
  readonly laterMinutes: number | null;
  /** The change makes it miss its due date. */
  readonly dueMissed: boolean;
}

/** How the slots of the handed plan lie in time. */
export interface SlotScale {
  readonly startsAt: string;
  readonly slotMinutes: number;
}

/** What the engine found in the page. */
export function shiftsFound(found: WhatIf, board: BoardData, { startsAt, slotMinutes }: SlotScale): Shifts {
  const names = new Map(board.jobs.map((job) => [job.id, `${job.number} ${job.name}`]));
  const moment = (at: number | null): number | null =>
    at === null ? null : Date.parse(startsAt) + at * slotMinutes * 60_000;
  return {
    moved: found.phases.length,
    conflictsCome: found.conflicts.added.length,
    conflictsGo: found.conflicts.removed.length,
    words: [],
    jobs: found.jobs.map((job) => ({
      key: job.jobId,
      name: names.get(job.jobId) ?? 'a job not shown',
      before: moment(job.finishBefore),
      after: moment(job.finishAfter),
      laterMinutes: job.shift === null ? null : job.shift * slotMinutes,
      dueMissed: job.dueMissedAfter && !job.dueMissedBefore,
    })),
  };
}

/** What the service answered. */
export function shiftsAnswered(supposed: Supposed): Shifts {
  const moment = (at: string | null | undefined): number | null => (at ? Date.parse(at) : null);
  return {
    moved: supposed.phases.length,
    conflictsCome: supposed.conflictsAdded.length,
    conflictsGo: supposed.conflictsRemoved.length,
    words: supposed.conflictsAdded.map(({ text }) => text),
    jobs: supposed.jobs.map((one, i) => ({
      key: one.job?.id ?? `job ${i}`,
      name: one.job ? `${one.job.number} ${one.job.name}` : 'a job not shown',
      before: moment(one.before),
      after: moment(one.after),
      laterMinutes: one.laterMinutes ?? null,
      dueMissed: one.dueMissedAfter && !one.dueMissedBefore,
    })),
  };
}
