import type { HoldPointState, Prisma } from '../../generated/prisma/client.js';
import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { LimitExceeded } from '../errors/limit-exceeded.js';
import { type Judged, judgeValues } from '../judge-values.js';
import type { MeasuredValueInput } from '../measured-value.input.js';
import { itemsOf } from '../stored-items.js';
import { demandKind } from './demand-kind.js';
import { gateIsPassed, type GatedHoldPoint } from './hold-point-with-gate.js';

/** What a decision rests on. */
export interface Measured {
  readonly values: readonly MeasuredValueInput[];
  readonly remark: string | null;
}

/** What was decided at a hold point. */
interface Decision {
  readonly state: HoldPointState;
  readonly action: string;
  readonly reason: string | null;
  readonly judged?: Judged;
}

/** Releases a hold point. @throws Refused where a value is outside its limit or what its kind asks for is missing. */
export async function releasePoint(change: Change, point: GatedHoldPoint, { values, remark }: Measured) {
  const found = await demandKind(change, point);
  const judgement = judgeValues(psiAside(point), values);
  if (!judgement.ok) throw new Refused(new LimitExceeded(judgement.findings));
  const judged = { ...judgement, findings: [...judgement.findings, ...found] };
  return decide(change, point, { state: 'released', action: 'hold point released', reason: remark, judged });
}

/** Refuses a hold point. @throws Refused where its kind is not refused by hand, or its gate is passed. */
export function refusePoint(change: Change, point: GatedHoldPoint, { values, remark }: Measured) {
  if (point.kind === 'inspection' || point.kind === 'reading') {
    const how = point.kind === 'inspection' ? 'the result of the inspection' : 'the reading as it was taken';
    throw new Refused(new WrongState(point.state, `${point.title} is not refused by hand: record ${how}.`));
  }
  if (point.state !== 'open' && point.state !== 'refused') demandGateAhead(point);
  const judged = judgeValues(itemsOf(point), values);
  return decide(change, point, { state: 'refused', action: 'hold point refused', reason: remark, judged });
}

/** @throws Refused with WrongState where the phase has passed the gate that the hold point stands before. */
export function demandGateAhead(point: GatedHoldPoint): void {
  if (!gateIsPassed(point)) return;
  const message = `${point.phase.name} has passed this gate; put the phase back first.`;
  throw new Refused(new WrongState(point.state, message));
}

/** Writes a decision and tells the journal. */
export async function decide(
  change: Change,
  point: GatedHoldPoint,
  decision: Decision,
): Promise<{ holdPointId: string }> {
  const { state, action, reason, judged } = decision;
  await change.tx.holdPoint.update({
    where: { id: point.id },
    data: {
      state,
      reason,
      decidedById: change.ctx.personId,
      decidedAt: change.now,
      ...(judged && { measured: json(judged.measured), findings: json(judged.findings) }),
      revision: { increment: 1 },
    },
  });
  change.record({
    action,
    subjectType: 'holdPoint',
    subjectId: point.id,
    jobId: point.jobId,
    detail: {
      title: point.title,
      phase: point.phase.name,
      ...(judged && { measured: json(judged.measured) }),
    },
    reason,
  });
  return { holdPointId: point.id };
}

/** A strength is computed from temperatures, not typed in; the other items of a cure are measured as usual. */
function psiAside(point: GatedHoldPoint) {
  return itemsOf(point).filter(({ unit }) => point.kind !== 'cure' || unit !== 'psi');
}

const json = (value: unknown): Prisma.InputJsonValue => value as Prisma.InputJsonValue;
