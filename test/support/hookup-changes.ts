import type { Change } from '../../src/platform/change/change.js';

/** Makes a hookup ready inside a change and asks for its notice, as the service does when the last need is met. */
export async function becomeReady(change: Change, hookupId: string): Promise<void> {
  const { readyCount } = await change.tx.hookup.update({
    where: { id: hookupId },
    data: {
      state: 'ready',
      readyAt: change.now,
      readyCount: { increment: 1 },
      coldLeadThrough: true,
      coldLeadFreeInches: 12,
      sensorThrough: true,
      leadsLabelled: true,
    },
  });
  await change.later('hookup-ready', { hookupId, readyCount });
}

/** Takes a need away inside a change and asks for the withdrawal, as the service does. */
export async function loseNeed(change: Change, hookupId: string): Promise<void> {
  const { readyCount } = await change.tx.hookup.update({
    where: { id: hookupId },
    data: { state: 'waiting', readyAt: null, leadsLabelled: false },
  });
  await change.later('hookup-withdrawn', { hookupId, readyCount });
}
