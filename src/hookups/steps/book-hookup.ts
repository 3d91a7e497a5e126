import { allMet } from '../../../shared/heating/need.js';
import type { Change } from '../../platform/change/change.js';
import { refuseInput } from '../../platform/outcomes/demand-past.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { NeedsMissing } from '../errors/needs-missing.js';
import type { BookHookupInput } from '../hookup.inputs.js';
import { demandHookup, demandNotDone, needsNow } from './demand-hookup.js';

const DAY_MS = 24 * 60 * 60 * 1000;

/** Books the electrician's day once all needs are met; it may be booked anew. */
export async function bookHookup(change: Change, input: BookHookupInput): Promise<{ hookupId: string }> {
  const hookup = await demandHookup(change, input);
  demandNotDone(hookup);
  const needs = await needsNow(change, hookup);
  if (!allMet(needs.hookup))
    throw new Refused(new NeedsMissing(needs.hookup, `Booking the hookup of ${hookup.heatingSet.name}`));
  // A day may be given by its first instant, so today counts as a day ahead.
  if (input.day.getTime() <= change.now.getTime() - DAY_MS)
    refuseInput('day', `${input.day.toISOString()} is past; choose today or a day ahead.`);
  const { role, personId, name } = change.ctx;
  const electrician = role === 'electrician' && personId ? { electricianId: personId } : {};
  await change.tx.hookup.update({
    where: { id: hookup.id },
    data: {
      state: 'booked',
      bookedFor: input.day,
      bookedBy: name,
      ...electrician,
      revision: { increment: 1 },
    },
  });
  change.record({
    action: 'hookup booked',
    subjectType: 'hookup',
    subjectId: hookup.id,
    jobId: hookup.jobId,
    detail: { name: hookup.heatingSet.name, day: input.day.toISOString() },
  });
  return { hookupId: hookup.id };
}
