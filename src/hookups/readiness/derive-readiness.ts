import { allMet } from '../../../shared/heating/need.js';
import type { Hookup } from '../../generated/prisma/client.js';
import { type HookupNeeds, needsByHookup } from '../../heating/heating.face.js';
import type { Change } from '../../platform/change/change.js';
import { deriveEnergising } from './derive-energising.js';

/** Brings every hookup that is not energised yet in line with its needs, and tells the electrician when that turns. */
export async function deriveReadiness(change: Change): Promise<void> {
  const { companyId } = change.ctx;
  const hookups = await change.tx.hookup.findMany({
    where: { companyId, energisedAt: null, job: { state: { in: ['entered', 'running', 'done'] } } },
    orderBy: { id: 'asc' },
  });
  const all = await needsByHookup(change.tx, companyId, hookups, change.now);
  for (const hookup of hookups) {
    const needs = all.get(hookup.id);
    if (!needs) continue;
    if (hookup.state === 'done') await deriveEnergising(change, hookup, needs);
    else await derive(change, hookup, needs);
  }
}

async function derive(change: Change, hookup: Hookup, needs: HookupNeeds): Promise<void> {
  const ready = allMet(needs.hookup);
  if (ready && hookup.state === 'waiting') await becomeReady(change, hookup);
  if (!ready && hookup.state !== 'waiting') await withdraw(change, hookup, needs);
}

async function becomeReady(change: Change, hookup: Hookup): Promise<void> {
  const { readyCount } = await change.tx.hookup.update({
    where: { id: hookup.id },
    data: {
      state: 'ready',
      readyAt: change.now,
      readyCount: { increment: 1 },
      revision: { increment: 1 },
    },
  });
  record(change, hookup, 'hookup ready', { readyCount });
  await change.later('hookup-ready', { hookupId: hookup.id, readyCount });
}

/** A need was lost: the booked day falls, and the electrician hears of it under the number of the notice he got. */
async function withdraw(change: Change, hookup: Hookup, needs: HookupNeeds): Promise<void> {
  const { readyCount } = hookup;
  await change.tx.hookup.update({
    where: { id: hookup.id },
    data: { state: 'waiting', readyAt: null, bookedFor: null, bookedBy: null, revision: { increment: 1 } },
  });
  const missing = needs.hookup.filter(({ met }) => !met).map(({ id }) => id);
  record(change, hookup, 'hookup withdrawn', { readyCount, missing });
  await change.later('hookup-withdrawn', { hookupId: hookup.id, readyCount });
}

function record(
  change: Change,
  hookup: Hookup,
  action: string,
  detail: Record<string, number | string[]>,
): void {
  change.record({ action, subjectType: 'hookup', subjectId: hookup.id, jobId: hookup.jobId, detail });
}
