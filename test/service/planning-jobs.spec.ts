import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { enterDemoCompany, ZONE } from '../../prisma/demo/company.js';
import { must } from '../../prisma/demo/hands.js';
import { MEASUREMENTS } from '../../prisma/demo/measurements.js';
import { verify } from '../../shared/schedule/verify/verify.js';
import { readRows } from '../../src/planning/gather/read-rows.js';
import { computePlan } from '../../src/planning/replan/compute-plan.js';
import { ChangeRunner } from '../../src/platform/change/change-runner.js';
import { contextOf, type Context } from '../../src/platform/context.js';
import type { ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';

interface Planned {
  readonly name: string;
  readonly planned: {
    readonly startAt: string;
    readonly reasons: readonly { kind: string; text: string }[];
  } | null;
}

describe('whole jobs, entered from measurements', () => {
  let service: TestService;
  let office: ApiClient;
  let ctx: Context;
  let siteId: string;

  beforeAll(async () => {
    service = await startService();
    const { company, people } = await makeCompany(service.database, 'Whole jobs');
    ctx = contextOf({ companyId: company.id, personId: people.office.id, role: 'office', name: 'office' });
    office = await service.signIn(people.office.email, TEST_PASSWORD);
    const authorityId = await enterDemoCompany(office);
    const place = { town: 'Alder Bend', zone: ZONE, frostDepthInches: 42, frostSource: 'invented' };
    await must(office, 'createSite', { address: '1 First Street', ...place, authorityId });
    siteId = (await service.database.site.findFirstOrThrow({ where: { companyId: company.id } })).id;
    for (const [name, measurement] of Object.entries(MEASUREMENTS).slice(0, 3))
      await must(office, 'createJob', {
        siteId,
        name,
        ownerName: 'A. Linden',
        priority: 3,
        measurement: JSON.stringify(measurement),
      });
  });
  afterAll(() => service.stop());

  const phases = async (): Promise<Planned[]> => {
    const { jobs } = await office.data<{ jobs: { edges: { node: { phases: Planned[] } }[] } }>(
      '{ jobs { edges { node { phases { name planned { startAt reasons { kind text } } } } } } }',
    );
    return jobs.edges.flatMap(({ node }) => node.phases);
  };
  const planNumber = async () =>
    (await service.database.company.findUniqueOrThrow({ where: { id: ctx.companyId } })).planNumber;

  it('find a place for every phase, without a conflict', async () => {
    expect((await phases()).filter(({ planned }) => planned === null)).toEqual([]);
    expect(await office.data('{ planConflicts { kind } }')).toEqual({ planConflicts: [] });
  });

  it('make a plan in which an independent checker finds nothing broken', async () => {
    const rows = await service.app.get(ChangeRunner).runInternal(ctx, (change) => readRows(change));
    const { input, plan } = computePlan(rows, Date.parse('2031-01-06T14:00:00Z'));
    expect(verify(input, plan)).toEqual([]);
  });

  it('are planned the same again when nothing has changed', async () => {
    const number = await planNumber();
    for (let again = 0; again < 3; again += 1)
      await service.app
        .get(ChangeRunner)
        .runInternal(ctx, async (change) =>
          change.record({ action: 'looked again', subjectType: 'company', subjectId: ctx.companyId }),
        );
    expect(await planNumber()).toBe(number);
  });

  it('chain every reason back to today or to a date from outside', async () => {
    const ends = new Set<string>();
    for (const { name, planned } of await phases()) {
      const last = planned?.reasons.at(-1);
      expect({ name, text: last?.text }).toEqual({ name, text: expect.stringMatching(/\.$/) });
      ends.add(last?.kind ?? 'none');
      expect(planned?.reasons.every(({ text }) => !/undefined|null|NaN/.test(text))).toBe(true);
    }
    const today = ['now', 'actual', 'clearance', 'visit-notice', 'visit-hours', 'calendar'];
    expect([...ends].filter((kind) => !today.includes(kind))).toEqual([]);
  });

  it('promise a whole job as planned, and tell the office when a permit nobody asked for moves it', async () => {
    const job = await service.database.job.findFirstOrThrow({ where: { companyId: ctx.companyId } });
    await must(office, 'commitJob', { jobId: job.id });
    expect(await service.database.proposal.count({ where: { companyId: ctx.companyId } })).toBe(0);
    service.setClock('2031-01-07T13:00:00Z');
    await must(office, 'updateJob', { jobId: job.id, ownerName: 'B. Linden' });
    const open = await service.database.proposal.findMany({ where: { companyId: ctx.companyId } });
    service.setClock('2031-01-06T14:00:00Z');
    expect(open).toMatchObject([{ state: 'open', cause: 'job changed' }]);
  });
});
