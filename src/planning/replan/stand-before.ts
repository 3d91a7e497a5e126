import type { Change } from '../../platform/change/change.js';
import type { PlanningRows } from '../gather/rows.js';

/** Where a phase is to be ranked as if the plan before had had it there. */
export interface StoodAt {
  readonly phaseId: string;
  readonly startAt: Date;
  readonly crewId: string | null;
}

/** What a change asks of the plan that it makes, and of that plan alone. */
interface Wish {
  readonly places: readonly StoodAt[];
  /** The proposal that was accepted, which is told the number of the plan made. */
  readonly proposalId: string | null;
}

const wishes = new WeakMap<Change, Wish>();

/** Asks that the plan of this change rank some phases by other places than those of the plan before. */
export function standBefore(
  change: Change,
  places: readonly StoodAt[],
  proposalId: string | null = null,
): void {
  wishes.set(change, { places, proposalId });
}

/** The rows as the plan of this change is to rank them. */
export function rankedRows(change: Change, rows: PlanningRows): PlanningRows {
  const places = new Map(wishes.get(change)?.places.map((one) => [one.phaseId, one]));
  if (places.size === 0) return rows;
  const planned = rows.planned.map((row) => {
    const place = places.get(row.phaseId);
    return place ? { ...row, startAt: place.startAt, crewId: place.crewId } : row;
  });
  return { ...rows, planned };
}

/** Notes on the accepted proposal which plan followed it: while that one is in force the acceptance can be undone. */
export async function noteAcceptedPlan(change: Change, planNumber: number): Promise<void> {
  const id = wishes.get(change)?.proposalId;
  if (id) await change.tx.proposal.update({ where: { id }, data: { acceptedPlan: planNumber } });
}
