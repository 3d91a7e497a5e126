import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { enterDemoCompany, ZONE } from '../../prisma/demo/company.js';
import { must } from '../../prisma/demo/hands.js';
import { MEASUREMENTS } from '../../prisma/demo/measurements.js';
import { makeCompany, TEST_PASSWORD } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';
import { SiteDriver } from '../support/site-driver.js';

describe('an entry of the built-in template', () => {
  let service: TestService;

  beforeAll(async () => {
    service = await startService({ now: '2031-01-06T14:00:00Z' });
  });
  afterAll(() => service.stop());

  it('is run from the first phase to the last by doing just what its obstacles say', async () => {
    const { database, setClock } = service;
    const { company, people } = await makeCompany(database);
    const office = await service.signIn(people.office.email, TEST_PASSWORD);
    const electrician = await service.signIn(people.electrician.email, TEST_PASSWORD);
    const authorityId = await enterDemoCompany(office);
    await must(office, 'createSite', {
      address: '4 Larch Street',
      town: 'Alder Mills',
      zone: ZONE,
      frostDepthInches: 42,
      frostSource: 'town',
      authorityId,
    });
    const where = { companyId: company.id };
    const site = await database.site.findFirstOrThrow({ where });
    await must(office, 'createJob', {
      siteId: site.id,
      name: 'Larch Street',
      ownerName: 'R. Alder',
      measurement: JSON.stringify(MEASUREMENTS['Larch Street']),
    });
    const job = await database.job.findFirstOrThrow({ where });
    const driver = new SiteDriver(
      { database, office, electrician, setClock },
      job.id,
      Date.parse('2031-01-06T14:00:00Z'),
    );
    await driver.runToEnd();

    expect([...driver.met].sort()).toEqual(
      expect.arrayContaining([
        'BeforePredecessor',
        'ClearanceMissing',
        'CureNotReached',
        'HoldPointOpen',
        'InspectionOutstanding',
        'NeedsMissing',
        'PredecessorUnfinished',
        'ReadingMissing',
      ]),
    );
    await expectKeptLinks(job.id);
    // The trade's order, told by the actual times: inspection before concrete, reading before cover, cure before heat.
    const ready = await database.outbox.findMany({ where: { ...where, topic: 'hookup-ready' } });
    const hookups = await database.hookup.findMany({ where, include: { heatingSet: true } });
    expect(ready).toHaveLength(hookups.length);
    for (const { energisedAt, energiseAllowedAt, heatingSet } of hookups) {
      const beds = await database.holdPoint.findMany({
        where: { heatingSetId: heatingSet.id, readingStage: 'covered' },
        include: { phase: true },
      });
      for (const { phase } of beds) {
        const cured = (phase.actualFinish?.getTime() ?? Infinity) + heatingSet.cureDays * 24 * 60 * 60 * 1000;
        expect(energisedAt?.getTime()).toBeGreaterThanOrEqual(cured);
      }
      expect(energisedAt?.getTime()).toBeGreaterThanOrEqual(energiseAllowedAt?.getTime() ?? Infinity);
    }
    const pour = await database.phase.findFirstOrThrow({ where: { ...where, kind: 'footing-pour' } });
    const footing = await database.inspection.findFirstOrThrow({ where: { ...where, key: 'footing' } });
    expect(pour.actualStart?.getTime()).toBeGreaterThanOrEqual(footing.resultAt?.getTime() ?? Infinity);
  }, 600_000);

  /** No phase started or finished before its links let it. */
  async function expectKeptLinks(jobId: string): Promise<void> {
    const links = await service.database.link.findMany({
      where: { jobId },
      include: { from: true, to: true },
    });
    expect(links.length).toBeGreaterThan(20);
    const broken = links.filter(({ kind, from, to, lagMinutes }) => {
      const since = kind.startsWith('finish') ? from.actualFinish : from.actualStart;
      const then = kind.endsWith('Start') ? to.actualStart : to.actualFinish;
      return !since || !then || then.getTime() < since.getTime() + lagMinutes * 60_000;
    });
    expect(broken.map(({ from, to }) => `${from.key} → ${to.key}`)).toEqual([]);
  }
});
