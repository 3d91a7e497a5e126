import { expect } from '@jest/globals';
import type { BareJob } from '../support/bare-job.js';
import type { ServiceProcess } from '../support/service-process.js';
import { until } from '../support/until.js';
import type { FaultStage } from './fault-stage.js';

const RECOVERY_MILLISECONDS = 120_000;

/** The deliveries of the hookup notices of some jobs. */
export function deliveriesOf({ database }: FaultStage, ...bare: BareJob[]) {
  return database.delivery.findMany({
    where: { notice: { kind: 'hookup-ready', jobId: { in: bare.map(({ job }) => job.id) } } },
  });
}

/** How often the leads of a job were recorded, and how many outbox rows speak of its hookup. */
export async function effectsOn({ database }: FaultStage, { hookup }: BareJob) {
  return {
    leadsRecorded: await database.journalEntry.count({
      where: { subjectId: hookup.id, action: 'leads recorded' },
    }),
    outboxRows: await database.outbox.count({
      where: { payload: { path: ['hookupId'], equals: hookup.id } },
    }),
  };
}

/**
 * Waits until the notices of the jobs are recorded as sent and nothing is left anywhere that could send once more: the
 * outbox is done, no delivery waits, the queue is empty. Then stops the worker.
 */
export async function settle(stage: FaultStage, worker: ServiceProcess, ...bare: BareJob[]): Promise<void> {
  await until(
    'every notice is recorded as sent and nothing is left to do',
    async () => {
      const rows = await deliveriesOf(stage, ...bare);
      const sent = rows.length === bare.length && rows.every(({ state }) => state === 'sent');
      const undone = await stage.database.outbox.count({ where: { doneAt: null } });
      return sent && undone === 0 && (await stage.queued()) === 0;
    },
    RECOVERY_MILLISECONDS,
  );
  await worker.stop();
  expect(await stage.database.delivery.count({ where: { state: 'claimed' } })).toBe(0);
}
