import { allMet } from '../../../shared/heating/need.js';
import { needsByHookup } from '../../heating/heating.face.js';
import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { demandPast, refuseInput } from '../../platform/outcomes/demand-past.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { NeedsMissing } from '../errors/needs-missing.js';
import type { RecordEnergisedInput } from '../hookup.inputs.js';
import { demandHookup } from './demand-hookup.js';

/** Records that a set was energised; never before its hookup, the final inspection, its last reading and its cure. */
export async function recordEnergised(
  change: Change,
  input: RecordEnergisedInput,
): Promise<{ hookupId: string }> {
  const hookup = await demandHookup(change, input);
  const { name } = hookup.heatingSet;
  if (hookup.energisedAt)
    throw new Refused(
      new WrongState('energised', `${name} is recorded as energised at ${hookup.energisedAt.toISOString()}.`),
    );
  const at = demandPast(change, input.at);
  const needs = (await needsByHookup(change.tx, change.ctx.companyId, [hookup], at)).get(hookup.id);
  if (!needs || !allMet(needs.energising))
    throw new Refused(new NeedsMissing(needs?.energising ?? [], `Energising ${name}`));
  if (hookup.doneAt && at < hookup.doneAt)
    refuseInput('at', `${name} was connected only at ${hookup.doneAt.toISOString()}; enter a later time.`);
  await change.tx.hookup.update({
    where: { id: hookup.id },
    data: { energisedAt: at, revision: { increment: 1 } },
  });
  change.record({
    action: 'heating set energised',
    subjectType: 'hookup',
    subjectId: hookup.id,
    jobId: hookup.jobId,
    detail: { name, at: at.toISOString() },
  });
  return { hookupId: hookup.id };
}
