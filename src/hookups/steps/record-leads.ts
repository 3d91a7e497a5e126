import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import type { RecordLeadsInput } from '../hookup.inputs.js';
import { demandHookup, demandNotDone } from './demand-hookup.js';

/** Writes how the leads stand; whether the hookup is ready then follows from that. */
export async function recordLeads(change: Change, input: RecordLeadsInput): Promise<{ hookupId: string }> {
  const hookup = await demandHookup(change, input);
  demandNotDone(hookup);
  const { heatingSet } = hookup;
  if (!heatingSet.receivedAt)
    throw new Refused(
      new WrongState(
        'not received',
        `${heatingSet.name} is not received; its leads cannot be through a wall.`,
      ),
    );
  const leads = {
    coldLeadThrough: input.coldLeadThrough,
    coldLeadFreeInches: input.coldLeadFreeInches ?? null,
    sensorThrough: input.sensorThrough,
    leadsLabelled: input.leadsLabelled,
  };
  await change.tx.hookup.update({
    where: { id: hookup.id },
    data: { ...leads, revision: { increment: 1 } },
  });
  change.record({
    action: 'leads recorded',
    subjectType: 'hookup',
    subjectId: hookup.id,
    jobId: hookup.jobId,
    detail: { name: heatingSet.name, ...leads },
  });
  return { hookupId: hookup.id };
}
