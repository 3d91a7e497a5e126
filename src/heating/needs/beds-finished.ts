import { type EpochMs, epochMs } from '../../../shared/units/time.js';
import type { Transaction } from '../../platform/database/database.js';
import type { ReadSet } from '../stored-set.js';

/** When the bed over one area of a set was finished; null while it is not. */
export interface FinishedBed {
  readonly areaKey: string;
  readonly at: EpochMs | null;
}

/**
 * The beds over each area of the sets: the phase that carries the reading after covering is the one that covers, so
 * its finish is when that bed begins to cure.
 */
export async function bedsFinished(
  tx: Transaction,
  companyId: string,
  sets: readonly ReadSet[],
): Promise<Map<string, FinishedBed[]>> {
  const covering = await tx.holdPoint.findMany({
    where: {
      companyId,
      heatingSetId: { in: sets.map(({ id }) => id) },
      readingStage: 'covered',
      phase: { state: { not: 'dropped' } },
    },
    select: { heatingSetId: true, phase: { select: { areaId: true, state: true, actualFinish: true } } },
  });
  return new Map(
    sets.map((set) => [
      set.id,
      set.areas.map(({ area }) => {
        const finishes = covering
          .filter(({ heatingSetId, phase }) => heatingSetId === set.id && phase.areaId === area.id)
          .map(({ phase }) => (phase.state === 'done' ? phase.actualFinish : null));
        return { areaKey: area.key, at: lastOf(finishes) };
      }),
    ]),
  );
}

function lastOf(finishes: readonly (Date | null)[]): EpochMs | null {
  const known = finishes.flatMap((at) => at?.getTime() ?? []);
  return known.length > 0 && known.length === finishes.length ? epochMs(Math.max(...known)) : null;
}
