import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { todayAndTomorrow } from '../../src/board/today.service.js';
import type { Phase } from '../../src/generated/prisma/client.js';
import { addPhase, type BareJob, makeBareJob, planPhase } from '../support/bare-job.js';
import { makeCompany, TEST_PASSWORD, type TestCompany } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';

const NOW = '2031-01-06T14:00:00Z';

describe('the sheet of the day', () => {
  let service: TestService;
  let mine: TestCompany;
  let bare: BareJob;
  let masons: string;
  let diggers: string;
  let counter = 0;

  beforeAll(async () => {
    service = await startService({ now: NOW });
    mine = await makeCompany(service.database);
    bare = await makeBareJob(service.database, mine.company.id);
    masons = await crew('Masons');
    diggers = await crew('Diggers');
    await service.database.crewMember.create({
      data: { companyId: mine.company.id, crewId: masons, personId: mine.people.crew.id },
    });
  });
  afterAll(() => service.stop());

  beforeEach(async () => {
    await service.database.link.deleteMany({ where: { jobId: bare.job.id } });
    await service.database.plannedPhase.deleteMany();
    await service.database.phase.deleteMany({ where: { jobId: bare.job.id, id: { not: bare.phase.id } } });
  });

  const crew = async (name: string): Promise<string> => {
    const data = {
      companyId: mine.company.id,
      name,
      trades: ['mason'],
      size: 2,
      zone: 'America/New_York',
      week: {},
    };
    return (await service.database.crew.create({ data })).id;
  };
  const phase = (name: string, more: Partial<Phase> = {}): Promise<Phase> => {
    counter += 1;
    return addPhase(service.database, {
      companyId: mine.company.id,
      jobId: bare.job.id,
      key: `p-${counter}`,
      name,
      trade: 'mason',
      ...more,
    });
  };
  const planned = async (
    name: string,
    from: string,
    to: string,
    crewId: string | null = masons,
    more: Partial<Phase> = {},
  ) => {
    const row = await phase(name, more);
    await planPhase(service.database, row, from, to, crewId);
    return row;
  };
  const today = async (email: string, crewId?: string): Promise<string[]> => {
    const client = await service.signIn(email, TEST_PASSWORD);
    const data = await client.data<{ today: { name: string }[] }>(
      'query($crewId: ID) { today(crewId: $crewId) { name } }',
      { crewId },
    );
    return data.today.map(({ name }) => name);
  };

  it("holds what is planned to touch today or tomorrow by the crew's clock", async () => {
    // New York is five hours behind: its Monday, 6 January 2031, runs from 05:00Z to 05:00Z.
    await planned('yesterday', '2031-01-05T14:00:00Z', '2031-01-06T04:30:00Z');
    await planned('since yesterday', '2031-01-05T14:00:00Z', '2031-01-06T15:00:00Z');
    await planned('today', '2031-01-06T18:00:00Z', '2031-01-06T20:00:00Z');
    await planned('tomorrow, late', '2031-01-08T04:00:00Z', '2031-01-08T04:45:00Z');
    await planned('the day after', '2031-01-08T05:00:00Z', '2031-01-08T06:00:00Z');
    expect(await today(mine.people.crew.email)).toEqual(['since yesterday', 'today', 'tomorrow, late']);
  });

  it('puts what is under way first, however long ago it was planned', async () => {
    await planned('today', '2031-01-06T13:00:00Z', '2031-01-06T20:00:00Z');
    await planned('under way', '2030-12-20T13:00:00Z', '2030-12-20T20:00:00Z', masons, {
      state: 'started',
      actualStart: new Date('2030-12-20T13:00:00Z'),
    });
    await planned('finished', '2031-01-06T13:00:00Z', '2031-01-06T14:00:00Z', masons, {
      state: 'done',
      actualStart: new Date('2031-01-06T13:00:00Z'),
      actualFinish: new Date('2031-01-06T14:00:00Z'),
    });
    expect(await today(mine.people.crew.email)).toEqual(['under way', 'today']);
  });

  it("is of the person's own crews, or of the crew asked for, or of all for a person without one", async () => {
    await planned('of the masons', '2031-01-06T13:00:00Z', '2031-01-06T20:00:00Z');
    await planned('of the diggers', '2031-01-06T14:00:00Z', '2031-01-06T20:00:00Z', diggers);
    expect(await today(mine.people.crew.email)).toEqual(['of the masons']);
    expect(await today(mine.people.crew.email, diggers)).toEqual(['of the diggers']);
    expect(await today(mine.people.foreman.email)).toEqual(['of the masons', 'of the diggers']);
  });

  it('follows the crew that really does the work, not the one that was planned', async () => {
    await planned('taken over', '2031-01-06T13:00:00Z', '2031-01-06T20:00:00Z', masons, {
      state: 'started',
      actualStart: new Date('2031-01-06T13:00:00Z'),
      actualCrewId: diggers,
    });
    expect(await today(mine.people.crew.email)).toEqual([]);
    expect(await today(mine.people.foreman.email, diggers)).toEqual(['taken over']);
  });

  it('keeps a cure on the sheet of the crew that placed it', async () => {
    const pour = await phase('pour', {
      state: 'done',
      actualStart: new Date('2031-01-05T13:00:00Z'),
      actualFinish: new Date('2031-01-05T15:00:00Z'),
      actualCrewId: masons,
    });
    const cure = await phase('cure', {
      trade: null,
      durationKind: 'elapsed',
      state: 'started',
      actualStart: new Date('2031-01-05T15:00:00Z'),
    });
    await service.database.link.create({
      data: {
        companyId: mine.company.id,
        jobId: bare.job.id,
        fromId: pour.id,
        toId: cure.id,
        kind: 'finishStart',
        origin: 'custom',
      },
    });
    expect(await today(mine.people.crew.email)).toEqual(['cure']);
    expect(await today(mine.people.crew.email, diggers)).toEqual([]);
  });

  it('leaves out jobs that are over', async () => {
    await planned('today', '2031-01-06T13:00:00Z', '2031-01-06T20:00:00Z');
    await service.database.job.update({ where: { id: bare.job.id }, data: { state: 'cancelled' } });
    expect(await today(mine.people.crew.email)).toEqual([]);
    await service.database.job.update({ where: { id: bare.job.id }, data: { state: 'running' } });
  });

  it("is empty for another company's crew, as for a missing one", async () => {
    const other = await makeCompany(service.database, 'Tamarack Stone');
    const foreign = await service.database.crew.create({
      data: {
        companyId: other.company.id,
        name: 'Strangers',
        trades: ['mason'],
        size: 1,
        zone: 'America/New_York',
        week: {},
      },
    });
    await planned('today', '2031-01-06T13:00:00Z', '2031-01-06T20:00:00Z');
    for (const id of [foreign.id, '019b0000-0000-7000-8000-000000000000', 'x']) {
      expect(await today(mine.people.office.email, id)).toEqual([]);
    }
  });

  it('reaches over 47 and 49 hours when the clocks change', () => {
    // US daylight saving time begins 9 March and ends 2 November 2031 (15 U.S.C. 260a: second Sunday of March, first of November).
    const hours = (now: string) => {
      const { from, to } = todayAndTomorrow(new Date(now), 'America/New_York');
      return (to.getTime() - from.getTime()) / 3_600_000;
    };
    expect(hours('2031-03-08T17:00:00Z')).toBe(47);
    expect(hours('2031-11-01T17:00:00Z')).toBe(49);
    expect(hours('2031-01-06T14:00:00Z')).toBe(48);
  });
});
