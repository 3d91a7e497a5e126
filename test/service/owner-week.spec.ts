import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { LinkBrowser } from '../support/link-browser.js';
import { RunningJob } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

/*
 * What the owner of a house reads by a link: seven days in plain words, and nothing that is not theirs. Words of owners are
 * common practice, no source.
 */

const NOW = '2031-01-06T14:00:00Z';
const WEEK = `{ ownerWeek { summary walk heat heatCaution days { date lines keepClear weather }
  head { recipient companyName askName askEmail jobName address town } } }`;

interface Week {
  readonly summary: string;
  readonly walk: string;
  readonly heat: string;
  readonly heatCaution: string | null;
  readonly days: readonly {
    readonly date: string;
    readonly lines: string[];
    readonly keepClear: string[];
    readonly weather: string[];
  }[];
  readonly head: Record<string, string>;
}

describe("the owner's week", () => {
  let service: TestService;
  let job: RunningJob;
  let owner: LinkBrowser;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    const made = await job.office.change<Record<string, unknown>>(
      'makeSignedLink',
      { jobId: job.job.id, purpose: 'ownerWeek', recipient: 'R. Alder' },
      '... on SignedLinkMade { address }',
    );
    owner = new LinkBrowser(service.url);
    await owner.press(String(made['address']));
  });
  afterAll(() => service.stop());

  const read = async (): Promise<Week> => {
    const { data, errors } = await owner.ask<{ ownerWeek: Week }>(WEEK);
    expect(errors).toBeUndefined();
    if (!data) throw new Error('The page shows no week');
    return data.ownerWeek;
  };
  const planned = (phase: Phase, startAt: string, finishAt: string) =>
    service.database.plannedPhase.upsert({
      where: { phaseId: phase.id },
      update: { startAt: new Date(startAt), finishAt: new Date(finishAt), segments: [] },
      create: {
        phaseId: phase.id,
        companyId: job.company.id,
        planNumber: 1,
        startAt: new Date(startAt),
        finishAt: new Date(finishAt),
        segments: [],
        totalFloatMinutes: 0,
        freeFloatMinutes: 0,
        critical: false,
        weatherUnknown: false,
        reason: {},
      },
    });
  const entry = async () => {
    const demo = await job.phase('demo', { trade: 'labour' });
    const stone = await job.phase('stone');
    const cure = await job.wait('bed-cure', 72);
    await planned(demo, '2031-01-07T13:00:00Z', '2031-01-07T21:00:00Z');
    await planned(stone, '2031-01-09T13:00:00Z', '2031-01-10T21:00:00Z');
    await planned(cure, '2031-01-10T21:00:00Z', '2031-01-13T21:00:00Z');
    return { demo, stone, cure };
  };

  it('lists seven days from today in the zone of the site, each with what happens and what to keep clear', async () => {
    const { demo } = await entry();
    await service.database.commitment.create({
      data: {
        companyId: job.company.id,
        phaseId: demo.id,
        startAt: new Date('2031-01-07T13:00:00Z'),
        finishAt: new Date('2031-01-07T21:00:00Z'),
        madeAt: new Date(NOW),
      },
    });
    const week = await read();
    expect(week.days.map(({ date, lines }) => [date, lines.length])).toEqual([
      ['2031-01-06', 0],
      ['2031-01-07', 1],
      ['2031-01-08', 0],
      ['2031-01-09', 1],
      ['2031-01-10', 2],
      ['2031-01-11', 1],
      ['2031-01-12', 1],
    ]);
    expect(week.days[1]?.lines[0]).toMatch(/^The old steps/);
    expect(week.days[3]?.lines[0]).toMatch(/^Expected: /);
    expect(week.days[1]?.keepClear[0]).toMatch(/children and pets/);
    expect(week.summary).toContain('on 5 of these seven days');
    expect(week.walk).toMatch(/broken out on Tuesday, January 7.*until Monday, January 13/);
    // An hour before midnight in New York it is still the fifth there.
    service.setClock('2031-01-06T04:00:00Z');
    expect((await read()).days[0]?.date).toBe('2031-01-05');
  });

  it('explains the days that weather takes, and keeps the words of the crew to itself', async () => {
    const { stone } = await entry();
    const hold = (more: object) =>
      service.database.weatherHold.create({
        data: {
          companyId: job.company.id,
          siteId: job.site.id,
          cause: 'called',
          startsAt: new Date('2031-01-09T05:00:00Z'),
          endsAt: new Date('2031-01-10T04:00:00Z'),
          reason: 'Tobias says the trench of the neighbour is full',
          ...more,
        },
      });
    await hold({ phaseId: stone.id });
    await hold({ phaseId: null, liftedAt: new Date(NOW), startsAt: new Date('2031-01-07T05:00:00Z') });
    const week = await read();
    expect(week.days.map(({ weather }) => weather.length)).toEqual([0, 0, 0, 1, 0, 0, 0]);
    expect(week.days[3]?.weather[0]).toBe(
      'The weather keeps some of the work waiting; the crew has stopped it.',
    );
    expect(week.summary).toContain('The weather keeps');
    expect(JSON.stringify(week)).not.toContain('Tobias');
  });

  it('says what is known of the heat, and to leave it off until then', async () => {
    expect(await read()).toMatchObject({ heat: 'This entry has no heat in it.', heatCaution: null });
    const set = await job.heatingSet();
    const connect = await job.phase('hookup', { trade: 'electrician' });
    const hookup = await service.database.hookup.create({
      data: { ...job.own, heatingSetId: set.id, phaseId: connect.id },
    });
    const energise = await job.phase('energise', { trade: 'electrician' });
    await planned(energise, '2031-02-10T15:00:00Z', '2031-02-10T16:00:00Z');
    const before = await read();
    expect(before.heat).toMatch(/around Monday, February 10.*not sure yet/);
    expect(before.heatCaution).toMatch(/breaker off.*licensed electrician/);
    const update = (data: object) => service.database.hookup.update({ where: { id: hookup.id }, data });
    await update({ energiseAllowedAt: new Date('2031-02-05T15:00:00Z') });
    expect((await read()).heat).toContain('from Wednesday, February 5 on');
    service.setClock('2031-02-05T16:00:00Z');
    expect((await read()).heat).toContain('The electrician switches it on');
    await update({ energisedAt: new Date('2031-02-05T15:30:00Z') });
    expect(await read()).toMatchObject({
      heat: 'The heat has been switched on and tested; you may use it.',
      heatCaution: null,
    });
  });

  it('tells nothing internal: no other job, no crew, no inspector, no name of a phase, no remark', async () => {
    const { demo, stone } = await entry();
    await service.database.phase.update({
      where: { id: demo.id },
      data: { name: 'SECRET-NAME', note: 'SECRET-NOTE', kind: 'secret-kind' },
    });
    await service.database.phase.update({ where: { id: stone.id }, data: { requiredCrewId: job.mason.id } });
    await service.database.authority.update({
      where: { id: job.authority.id },
      data: { phone: '555-0100-SECRET' },
    });
    const told = JSON.stringify(await read());
    for (const secret of [
      'SECRET',
      'secret',
      job.mason.name,
      job.labour.name,
      job.authority.name,
      job.people.foreman.email,
      job.people.foreman.name,
      job.people.electrician.email,
      job.job.id,
      job.site.id,
      '101',
    ])
      expect({ secret, told: told.includes(secret) }).toEqual({ secret, told: false });
    expect(told).toContain('Other work at the entry.');
    expect((await read()).head).toEqual({
      recipient: 'R. Alder',
      companyName: job.company.name,
      askName: job.people.office.name,
      askEmail: job.people.office.email,
      jobName: 'Larch Street',
      address: '4 Larch Street',
      town: 'Alder Mills',
    });
  });

  it('says so when the job is finished or was given up', async () => {
    const state = (to: 'done' | 'cancelled') =>
      service.database.job.update({ where: { id: job.job.id }, data: { state: to } });
    await state('done');
    expect((await read()).summary).toBe('The work is finished.');
    await state('cancelled');
    expect((await read()).summary).toContain('given up');
  });
});
