import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { enterDemoCompany, ZONE } from '../../prisma/demo/company.js';
import { enterJob } from '../../prisma/demo/enter-job.js';
import { MEASUREMENTS } from '../../prisma/demo/measurements.js';
import { TimeKeeper } from '../../src/worker/time-keeper.js';
import { makeCompany, TEST_PASSWORD } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';

describe('the passing of time', () => {
  let service: TestService;
  let jobId: string;

  beforeAll(async () => {
    service = await startService({ now: '2031-01-06T14:00:00Z' });
    const { people } = await makeCompany(service.database);
    const office = await service.signIn(people.office.email, TEST_PASSWORD);
    const authorityId = await enterDemoCompany(office);
    const measurement = MEASUREMENTS['Quarry Road'];
    if (!measurement) throw new Error(`Nobody measured Quarry Road in ${ZONE}`);
    ({ jobId } = await enterJob(office, authorityId, {
      street: 'Quarry Road',
      house: 3,
      owner: 'J. Whitlow',
      priority: 1,
      dueAt: null,
      measurement,
    }));
  });
  afterAll(() => service.stop());

  const firstStart = async () =>
    (
      await service.database.plannedPhase.findFirstOrThrow({
        where: { phase: { jobId } },
        orderBy: { startAt: 'asc' },
      })
    ).startAt;

  it('moves what did not start, though nobody changed anything, once an hour', async () => {
    const keeper = service.app.get(TimeKeeper);
    expect(await keeper.run()).toBe(1);
    const before = await firstStart();
    const entries = await service.database.journalEntry.count();
    expect(await keeper.run()).toBe(0);
    expect(await service.database.journalEntry.count()).toBe(entries);

    service.setClock('2031-02-20T14:00:00Z');
    expect(await keeper.run()).toBe(1);
    const after = await firstStart();
    expect(after.getTime()).toBeGreaterThan(before.getTime());
    expect(after.getTime()).toBeGreaterThanOrEqual(Date.parse('2031-02-20T14:00:00Z'));
    expect(await service.database.journalEntry.count()).toBeGreaterThan(entries);
  });
});
