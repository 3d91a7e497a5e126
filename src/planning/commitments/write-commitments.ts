import { CrewBusy } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { isExclusionViolation } from '../../platform/database/exclusion.js';
import { Refused } from '../../platform/outcomes/refusal.js';

/** Dates to promise for one phase. */
export interface Promised {
  readonly phaseId: string;
  readonly crewId: string | null;
  readonly startAt: Date;
  readonly finishAt: Date;
}

/** Takes back the promises that stand for these phases. @returns the ids taken back. */
export async function releaseHeld({ tx, ctx }: Change, phaseIds: readonly string[]): Promise<string[]> {
  const rows = await tx.commitment.updateManyAndReturn({
    where: { companyId: ctx.companyId, state: 'held', phaseId: { in: [...phaseIds] } },
    data: { state: 'released' },
    select: { id: true },
  });
  return rows.map(({ id }) => id).sort();
}

/**
 * Promises dates. Whatever stood for the same phases is taken back first, all of it, so that promises can change places.
 *
 * @returns ids of the new commitments, in the order given.
 * @throws Refused with CrewBusy when the database says that a crew would be promised twice for the same time.
 */
export async function writeCommitments(change: Change, promises: readonly Promised[]): Promise<string[]> {
  const { tx, ctx, now } = change;
  await releaseHeld(
    change,
    promises.map(({ phaseId }) => phaseId),
  );
  const ids: string[] = [];
  for (const promise of promises) {
    await tx.$executeRaw`savepoint commitment`;
    try {
      const made = await tx.commitment.create({
        data: {
          companyId: ctx.companyId,
          ...promise,
          state: 'held',
          madeAt: now,
          madeById: ctx.personId || null,
        },
      });
      ids.push(made.id);
    } catch (error) {
      if (!isExclusionViolation(error)) throw error;
      await tx.$executeRaw`rollback to savepoint commitment`;
      throw await busy(change, promise);
    }
    await tx.$executeRaw`release savepoint commitment`;
  }
  return ids;
}

/** Who has the crew in that time: read after the database has refused, so the row is there. */
async function busy({ tx, ctx }: Change, { crewId, startAt, finishAt }: Promised): Promise<Refused> {
  const { crew, phase, ...other } = await tx.commitment.findFirstOrThrow({
    where: {
      companyId: ctx.companyId,
      state: 'held',
      crewId,
      startAt: { lt: finishAt },
      finishAt: { gt: startAt },
    },
    include: { phase: { include: { job: true } }, crew: true },
    orderBy: { startAt: 'asc' },
  });
  return new Refused(
    new CrewBusy({
      crewId: crew?.id ?? '',
      crewName: crew?.name ?? 'The crew',
      phaseId: phase.id,
      phaseName: `${phase.name} (job ${phase.job.number}, ${phase.job.name})`,
      from: other.startAt,
      to: other.finishAt,
    }),
  );
}
