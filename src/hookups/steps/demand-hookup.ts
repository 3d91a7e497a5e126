import type { HeatingSet, Hookup, Phase } from '../../generated/prisma/client.js';
import { type HookupNeeds, needsByHookup } from '../../heating/heating.face.js';
import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { Refused } from '../../platform/outcomes/refusal.js';

/** A hookup with its set and its phase. */
export type SteppingHookup = Hookup & { readonly heatingSet: HeatingSet; readonly phase: Phase };

/** @throws Refused when it is missing, was changed meanwhile, or its job is cancelled. */
export async function demandHookup(
  change: Change,
  input: { readonly hookupId: string; readonly revision?: number | null },
): Promise<SteppingHookup> {
  const found = await change.tx.hookup.findFirst({
    where: { ...companyRow(change, input.hookupId), ...ofLink(change) },
    include: { heatingSet: true, phase: true, job: true },
  });
  const hookup = demandFound(found, 'hookup');
  demandRevision(hookup, input.revision, 'hookup');
  if (hookup.job.state === 'cancelled')
    throw new Refused(
      new WrongState('cancelled', `Job ${hookup.job.number} is cancelled; nothing is hooked up.`),
    );
  return hookup;
}

/** A hookup of another job is missing to the holder of a signed link. */
const ofLink = ({ ctx: { link } }: Change) => (link ? { jobId: link.jobId } : {});

/** @throws Refused with WrongState when the hookup is recorded already. */
export function demandNotDone({ state, heatingSet }: SteppingHookup): void {
  if (state !== 'done') return;
  throw new Refused(new WrongState(state, `The hookup of ${heatingSet.name} is recorded already.`));
}

/** The needs of one hookup as the rows stand now. */
export async function needsNow(change: Change, hookup: Hookup): Promise<HookupNeeds> {
  const needs = await needsByHookup(change.tx, change.ctx.companyId, [hookup], change.now);
  return demandFound(needs.get(hookup.id), 'heating set');
}
