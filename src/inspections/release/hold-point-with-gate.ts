import type {
  Clearance,
  HeatingSet,
  HoldPoint,
  Inspection,
  Job,
  Phase,
} from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { WrongState } from '../../phases/phases.face.js';

/** A hold point with what it depends on. */
export type GatedHoldPoint = HoldPoint & {
  readonly phase: Phase;
  readonly job: Job;
  readonly inspection: Inspection | null;
  readonly clearance: Clearance | null;
  readonly heatingSet: HeatingSet | null;
};

/**
 * The hold point that an input names, with what it depends on.
 *
 * @throws Refused when it is missing, was changed meanwhile, or belongs to a cancelled job or a dropped phase.
 */
export async function demandHoldPoint(
  change: Change,
  input: { readonly holdPointId: string; readonly revision?: number | null },
): Promise<GatedHoldPoint> {
  const found = await change.tx.holdPoint.findFirst({
    where: companyRow(change, input.holdPointId),
    include: { phase: true, job: true, inspection: true, clearance: true, heatingSet: true },
  });
  const point = demandFound(found, 'hold point');
  demandRevision(point, input.revision, 'hold point');
  if (point.job.state === 'cancelled')
    throw new Refused(
      new WrongState('cancelled', `Job ${point.job.number} is cancelled; nothing is decided there.`),
    );
  if (point.phase.state === 'dropped')
    throw new Refused(
      new WrongState('dropped', `${point.phase.name} was taken out of the job; nothing is decided there.`),
    );
  return point;
}

/** Whether the phase has passed the gate that the hold point stands before. */
export function gateIsPassed({ gate, phase }: Pick<GatedHoldPoint, 'gate' | 'phase'>): boolean {
  return phase.state === 'done' || (gate === 'start' && phase.state === 'started');
}
