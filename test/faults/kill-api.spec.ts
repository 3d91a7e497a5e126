import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from '@jest/globals';
import type { BareJob } from '../support/bare-job.js';
import { BECAME_READY, type FaultStage, recordLeads, setFaultStage } from './fault-stage.js';
import { effectsOn, settle } from './notice-watch.js';

const TEST_MILLISECONDS = 300_000;

/** Real processes on a real database and mail server: the API dies on either side of a commit. */
describe('an API killed', () => {
  let stage: FaultStage;
  let bare: BareJob;

  beforeAll(async () => {
    stage = await setFaultStage('postgresql');
  });

  beforeEach(async () => {
    bare = await stage.job();
  });

  afterAll(async () => {
    await stage.close();
  });

  test(
    'before-commit leaves the change as if it had never been, and the same key makes it once',
    async () => {
      const key = randomUUID();
      const doomed = await stage.start('api', 'before-commit');
      await expect(recordLeads(stage, doomed, bare, key)).rejects.toThrow();
      expect(await doomed.died()).toBe('SIGKILL');
      expect(await stage.database.hookup.findUnique({ where: { id: bare.hookup.id } })).toEqual(bare.hookup);
      expect(await effectsOn(stage, bare)).toEqual({ leadsRecorded: 0, outboxRows: 0 });

      const api = await stage.start('api');
      expect(await recordLeads(stage, api, bare, key)).toMatchObject(BECAME_READY);
      await api.stop();
      await settle(stage, await stage.start('worker'), bare);
      expect(stage.readyMails(bare)).toHaveLength(1);
      expect(await effectsOn(stage, bare)).toEqual({ leadsRecorded: 1, outboxRows: 1 });
    },
    TEST_MILLISECONDS,
  );

  test(
    'after-commit loses the answer, not the change; the same key gives the answer without a second effect',
    async () => {
      const key = randomUUID();
      const doomed = await stage.start('api', 'after-commit');
      await expect(recordLeads(stage, doomed, bare, key)).rejects.toThrow();
      expect(await doomed.died()).toBe('SIGKILL');
      expect(await effectsOn(stage, bare)).toEqual({ leadsRecorded: 1, outboxRows: 1 });

      const api = await stage.start('api');
      expect(await recordLeads(stage, api, bare, key)).toMatchObject(BECAME_READY);
      await api.stop();
      expect(await effectsOn(stage, bare)).toEqual({ leadsRecorded: 1, outboxRows: 1 });
      await settle(stage, await stage.start('worker'), bare);
      expect(stage.readyMails(bare)).toHaveLength(1);
    },
    TEST_MILLISECONDS,
  );
});
