import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from '@jest/globals';
import type { BareJob } from '../support/bare-job.js';
import type { ServiceProcess } from '../support/service-process.js';
import { until } from '../support/until.js';
import { BECAME_READY, type FaultStage, recordLeads, setFaultStage } from './fault-stage.js';
import { deliveriesOf, settle } from './notice-watch.js';

const TEST_MILLISECONDS = 300_000;
const NOW = '2031-01-06T14:00:00Z';

/**
 * Real processes on a real database, queue and mail server: the worker dies at each of its named points and is started
 * again. Nothing is lost, and nothing is repeated but within the one named window.
 */
describe.each(['postgresql', 'redis'] as const)('a worker killed with the queue on %s', (queueOn) => {
  let stage: FaultStage;
  let api: ServiceProcess;
  let bare: BareJob;

  beforeAll(async () => {
    stage = await setFaultStage(queueOn);
    api = await stage.start('api');
  }, TEST_MILLISECONDS);

  beforeEach(async () => {
    stage.setClock(NOW);
    bare = await stage.job();
  });

  afterAll(async () => {
    await stage.close();
  });

  const becomeReady = async (job = bare) =>
    expect(await recordLeads(stage, api, job, randomUUID())).toMatchObject(BECAME_READY);

  /** Commits the change, has a worker die at the point and another one do what is left. */
  async function dieAt(point: string): Promise<void> {
    await becomeReady();
    const doomed = await stage.start('worker', point);
    expect(await doomed.died()).toBe('SIGKILL');
    await settle(stage, await stage.start('worker'), bare);
  }

  test(
    'after-relay-queued has queued a row without marking it; it is told once',
    async () => {
      await dieAt('after-relay-queued');
      expect(stage.readyMails(bare)).toHaveLength(1);
    },
    TEST_MILLISECONDS,
  );

  test(
    'after-delivery-claimed leaves a delivery that nobody sends; the sweep finds it and it is sent once',
    async () => {
      await dieAt('after-delivery-claimed');
      expect(stage.readyMails(bare)).toHaveLength(1);
    },
    TEST_MILLISECONDS,
  );

  test(
    'after-provider-answered is the one window that repeats; the second copy has the message id of the first',
    async () => {
      await dieAt('after-provider-answered');
      const ids = stage.readyMails(bare).map((message) => message.header('message-id'));
      const [delivery] = await deliveriesOf(stage, bare);
      expect(ids).toEqual([`<${delivery?.id}@localhost>`, `<${delivery?.id}@localhost>`]);
    },
    TEST_MILLISECONDS,
  );

  test(
    'again and again while many notices go out: each arrives, and only copies with the same message id repeat',
    async () => {
      const jobs = [bare];
      while (jobs.length < 8) jobs.push(await stage.job());
      for (const job of jobs) await becomeReady(job);
      for (const milliseconds of [40, 320, 160]) {
        const doomed = await stage.start('worker');
        await new Promise((resolve) => setTimeout(resolve, milliseconds));
        await doomed.kill();
      }
      await settle(stage, await stage.start('worker'), ...jobs);
      for (const job of jobs) {
        const ids = stage.readyMails(job).map((message) => message.header('message-id'));
        expect(ids.length).toBeGreaterThanOrEqual(1);
        expect(new Set(ids).size).toBe(1);
      }
    },
    TEST_MILLISECONDS,
  );

  test(
    'not at all: two that work side by side tell nothing twice',
    async () => {
      const [one, other] = [await stage.start('worker'), await stage.start('worker')];
      await becomeReady();
      await settle(stage, one, bare);
      await other.stop();
      expect(stage.readyMails(bare)).toHaveLength(1);
    },
    TEST_MILLISECONDS,
  );

  test(
    'while reminders fall due: one of use is sent after the outage, one past its use is marked too late',
    async () => {
      const visit = (key: string, from: string, to: string) =>
        stage.database.inspection.create({
          data: {
            companyId: bare.job.companyId,
            jobId: bare.job.id,
            phaseId: bare.phase.id,
            key,
            title: key,
            state: 'booked',
            visitFrom: new Date(from),
            visitTo: new Date(to),
          },
        });
      const early = await visit('early', '2031-01-08T13:00:00Z', '2031-01-08T15:00:00Z');
      const late = await visit('late', '2031-01-08T19:00:00Z', '2031-01-08T21:00:00Z');
      await becomeReady();
      const doomed = await stage.start('worker');
      await doomed.kill();
      stage.setClock('2031-01-08T18:00:00Z');

      const worker = await stage.start('worker');
      const stateOf = async (subjectId: string) =>
        (await stage.database.reminder.findFirst({ where: { kind: 'visit-today', subjectId } }))?.state;
      await until('the late visit is told', async () => (await stateOf(late.id)) === 'sent', 120_000);
      await until('the early one is given up', async () => (await stateOf(early.id)) === 'tooLate', 120_000);
      await settle(stage, worker, bare);
      const subjects = stage.mail.messages().map(({ subject }) => subject);
      const visits = subjects.filter(
        (text) => text.startsWith('Inspector comes') && text.includes(bare.job.name),
      );
      // Office and foreman.
      expect(visits).toEqual(
        Array(2).fill(`Inspector comes today: late, job ${bare.job.number}, ${bare.job.name}`),
      );
    },
    TEST_MILLISECONDS,
  );
});
