import type { Hookup } from '../../generated/prisma/client.js';
import type { HookupNeeds } from '../../heating/heating.face.js';
import type { Change } from '../../platform/change/change.js';

/** Need that time alone meets. */
const CURE = 'bed-cured';

/**
 * Dates the leave to energise. When only the cure of the bed is left, its date is known, and the notice is asked for
 * at that date, so nothing has to happen then for the electrician to hear of it. A need that is lost takes the date
 * away; a bed that is finished anew moves it. Whoever was told already is told that the leave is withdrawn.
 */
export async function deriveEnergising(change: Change, hookup: Hookup, needs: HookupNeeds): Promise<void> {
  const allowedAt = allowedFrom(needs, hookup, change.now);
  if (allowedAt?.getTime() === hookup.energiseAllowedAt?.getTime()) return;
  await change.tx.hookup.update({
    where: { id: hookup.id },
    data: { energiseAllowedAt: allowedAt, revision: { increment: 1 } },
  });
  change.record({
    action: allowedAt ? 'energising dated' : 'leave to energise withdrawn',
    subjectType: 'hookup',
    subjectId: hookup.id,
    jobId: hookup.jobId,
    detail: { allowedAt: allowedAt?.toISOString() ?? null },
  });
  const told = hookup.energiseAllowedAt;
  if (told && told <= change.now) {
    await change.later('energising-withdrawn', { hookupId: hookup.id, allowedAt: told.toISOString() });
  }
  if (!allowedAt) return;
  const payload = { hookupId: hookup.id, readyCount: hookup.readyCount };
  await change.later('energising-allowed', payload, allowedAt);
}

/** From when on the set may be energised; null while a need is open that a person must meet. */
function allowedFrom({ energising, bedCuredAt }: HookupNeeds, hookup: Hookup, now: Date): Date | null {
  if (!bedCuredAt || energising.some(({ id, met }) => !met && id !== CURE)) return null;
  if (bedCuredAt > now) return bedCuredAt;
  // Once allowed, the moment stays the one that was told.
  return hookup.energiseAllowedAt && hookup.energiseAllowedAt <= now && hookup.energiseAllowedAt >= bedCuredAt
    ? hookup.energiseAllowedAt
    : now;
}
