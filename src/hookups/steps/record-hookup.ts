import { allMet } from '../../../shared/heating/need.js';
import { LimitExceeded } from '../../inspections/inspections.face.js';
import { demandNoObstacle, gatherFacts, JOB_CHECKS, settleWaits } from '../../phases/gates.face.js';
import type { Change } from '../../platform/change/change.js';
import { demandPast } from '../../platform/outcomes/demand-past.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { connectionFindings } from '../connection-findings.js';
import { NeedsMissing } from '../errors/needs-missing.js';
import type { RecordHookupInput } from '../hookup.inputs.js';
import { demandHookup, demandNotDone, needsNow, type SteppingHookup } from './demand-hookup.js';

const NEXT = 'Put it right first, and record the hookup then.';

/**
 * Records a connection: its needs are met, nothing stands before the start of its phase, and it has what a connection
 * must have. The phase of the hookup starts with it by itself.
 */
export async function recordHookup(change: Change, input: RecordHookupInput): Promise<{ hookupId: string }> {
  const hookup = await demandHookup(change, input);
  demandNotDone(hookup);
  const at = demandPast(change, input.at);
  const needs = await needsNow(change, hookup);
  if (!allMet(needs.hookup))
    throw new Refused(new NeedsMissing(needs.hookup, `The hookup of ${hookup.heatingSet.name}`));
  await demandOpenGate(change, hookup, at);
  const findings = connectionFindings(hookup.heatingSet, input);
  if (findings.some(({ ok }) => !ok)) throw new Refused(new LimitExceeded(findings, NEXT));
  const { breakerAmperes, disconnect, groundFault } = input;
  const record = { breakerAmperes, disconnect, groundFault, note: input.note?.trim() || null };
  await change.tx.hookup.update({
    where: { id: hookup.id },
    data: {
      state: 'done',
      doneAt: at,
      doneById: change.ctx.personId || null,
      doneBy: change.ctx.name,
      record,
      revision: { increment: 1 },
    },
  });
  change.record({
    action: 'hookup recorded',
    subjectType: 'hookup',
    subjectId: hookup.id,
    jobId: hookup.jobId,
    detail: { name: hookup.heatingSet.name, at: at.toISOString(), breakerAmperes, disconnect, groundFault },
    reason: record.note,
  });
  return { hookupId: hookup.id };
}

/** What the job asks for before the phase of the hookup starts; a phase that runs already has passed it. */
async function demandOpenGate(change: Change, hookup: SteppingHookup, at: Date): Promise<void> {
  await settleWaits(change);
  const { companyId } = change.ctx;
  const all = await gatherFacts(change.tx, { companyId, phaseIds: [hookup.phaseId], at });
  const facts = all.get(hookup.phaseId);
  if (facts?.phase.state === 'waiting') demandNoObstacle(facts, { gate: 'start', at }, JOB_CHECKS);
}
