import type { CableReading, HoldPoint, Phase, Prisma } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import type { ReadSet } from '../stored-set.js';
import type { StoredFinding } from './judge-stored.js';

type Point = HoldPoint & { readonly phase: Phase };

/**
 * Brings the reading hold points of a set in line with its readings: each follows the latest reading of its stage (and
 * area). An accepted one releases it; a failing one refuses it again, whatever was released before.
 */
export async function deriveReadingHoldPoints(change: Change, set: ReadSet): Promise<void> {
  const points = await change.tx.holdPoint.findMany({
    where: { companyId: change.ctx.companyId, heatingSetId: set.id, kind: 'reading' },
    include: { phase: true },
    orderBy: { id: 'asc' },
  });
  for (const point of points) {
    const reading = latestFor(point, set);
    if (!reading || followsAlready(point, reading)) continue;
    await follow(change, point, reading);
  }
}

/** The latest reading that a hold point waits for; of two at one instant the one that failed. */
function latestFor(point: Point, set: ReadSet): CableReading | undefined {
  const byArea = point.readingStage === 'laid' || point.readingStage === 'covered';
  return set.readings
    .filter(({ stage, areaId }) => stage === point.readingStage && (!byArea || areaId === point.phase.areaId))
    .toSorted((a, b) => a.at.getTime() - b.at.getTime() || Number(b.accepted) - Number(a.accepted))
    .at(-1);
}

function followsAlready(point: Point, reading: CableReading): boolean {
  const state = reading.accepted ? 'released' : 'refused';
  return point.state === state && point.decidedAt?.getTime() === reading.at.getTime();
}

async function follow(change: Change, point: Point, reading: CableReading): Promise<void> {
  const { accepted, at } = reading;
  const { findings, forbids } = reading.finding as unknown as StoredFinding;
  const reason = accepted ? null : `The reading is outside its limits and forbids ${forbids ?? 'going on'}.`;
  await change.tx.holdPoint.update({
    where: { id: point.id },
    data: {
      state: accepted ? 'released' : 'refused',
      reason,
      decidedAt: at,
      decidedById: reading.byId,
      findings: findings as unknown as Prisma.InputJsonArray,
      revision: { increment: 1 },
    },
  });
  change.record({
    action: accepted ? 'hold point released' : 'hold point refused',
    subjectType: 'holdPoint',
    subjectId: point.id,
    jobId: point.jobId,
    detail: { title: point.title, phase: point.phase.name, readingId: reading.id },
    reason,
  });
}
