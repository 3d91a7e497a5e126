import { afterAll, beforeAll, beforeEach, describe, expect, test } from '@jest/globals';
import type { Delivery, Prisma, WeatherHold } from '../../src/generated/prisma/client.js';
import { tellHolds, tellLifted, toTell } from '../../src/weather/holds/tell-holds.js';
import { storeCauses } from '../../src/weather/stored-causes.js';
import { published } from '../../shared/entry/source.js';
import { epochMs } from '../../shared/units/time.js';
import { addPhase, type BareJob, makeBareJob, planPhase } from '../support/bare-job.js';
import { makeCompany, type TestCompany } from '../support/company.js';
import { startMailServer, type TestMailServer } from '../support/mail-server.js';
import { until } from '../support/until.js';
import { workerBench, type WorkerBench } from '../support/worker.js';

/* Monday 6 January 2031, 09:00 in New York. */

const NOW = '2031-01-06T14:00:00Z';
const at = (iso: string) => new Date(iso);

let mail: TestMailServer;
let bench: WorkerBench;
let stopWorker: () => Promise<void>;
let house: TestCompany;
let bare: BareJob;
let crewId: string;

beforeAll(async () => {
  mail = await startMailServer();
  bench = await workerBench({ mailUrl: mail.url });
  stopWorker = await bench.worker.start();
});

beforeEach(async () => {
  bench.setClock(NOW);
  mail.clear();
  house = await makeCompany(bench.database);
  const companyId = house.company.id;
  bare = await makeBareJob(bench.database, companyId);
  const crew = await bench.database.crew.create({
    data: { companyId, name: 'Masons', trades: ['mason'], size: 2, zone: 'America/New_York', week: {} },
  });
  crewId = crew.id;
  for (const person of [house.people.foreman, house.people.crew])
    await bench.database.crewMember.create({ data: { companyId, crewId, personId: person.id } });
  await planPhase(bench.database, bare.phase, '2031-01-07T13:00:00Z', '2031-01-07T17:00:00Z', crewId);
});

afterAll(async () => {
  await stopWorker();
  await bench.stop();
  await mail.stop();
});

const CAUSES = storeCauses([
  {
    limitId: 'cold',
    label: 'Too cold for sealant',
    text: 'Too cold for sealant: 35 °F, under 40 °F',
    value: 35,
    limit: 40,
    unit: '°F',
    hour: epochMs(Date.parse('2031-01-07T13:00:00Z')),
    source: published('UFGS 07 92 00'),
  },
]);

/** The row of a hold of the phase on the 7th from 7:00 to 12:00 in New York. */
const heldRow = () => ({
  companyId: house.company.id,
  siteId: bare.site.id,
  phaseId: bare.phase.id,
  cause: 'forecast' as const,
  startsAt: at('2031-01-07T12:00:00Z'),
  endsAt: at('2031-01-07T17:00:00Z'),
});

/** A hold of the phase on the 7th from 7:00 to 12:00 in New York, with the outbox row of its opening. */
const open = (changes: Partial<Prisma.WeatherHoldUncheckedCreateInput> = {}): Promise<WeatherHold> =>
  bench.change(house.company, async (change) => {
    const row = heldRow();
    const hold = await change.tx.weatherHold.create({
      data: {
        ...row,
        reason: 'Too cold for sealant: 35 °F, under 40 °F',
        detail: CAUSES,
        told: toTell(row.startsAt, row.endsAt, ['cold']),
        tellings: 1,
        ...changes,
      },
    });
    await tellHolds(change, [{ id: hold.id, startsAt: hold.startsAt, telling: 1 }]);
    return hold;
  });
const lift = (hold: WeatherHold) =>
  bench.change(house.company, async (change) => {
    const data = { liftedAt: change.now, liftReason: 'The forecast no longer breaks the limit.' };
    await change.tx.weatherHold.update({ where: { id: hold.id }, data });
    await tellLifted(change, [hold.id]);
  });

const deliveries = (): Promise<Delivery[]> =>
  bench.database.delivery.findMany({ where: { companyId: house.company.id }, orderBy: { id: 'asc' } });
const workedOff = () =>
  until('the outbox is worked off', async () => {
    const where = { companyId: house.company.id, doneAt: null };
    return (await bench.database.outbox.count({ where })) === 0;
  });
const settled = async (...states: Delivery['state'][]) => {
  await workedOff();
  await until(`deliveries are ${states.join(' or ')}`, async () =>
    (await deliveries()).every(({ state }) => states.includes(state)),
  );
};
/** Who of the house got mail with a subject, by role; what an earlier house was still owed may come meanwhile. */
const got = (subject: string) =>
  mail
    .messages()
    .filter((message) => message.subject.startsWith(subject))
    .filter(({ to }) => Object.values(house.people).some(({ email }) => email === to))
    .map(({ to }) => String(to).split('.')[0])
    .sort();

describe('a hold of the weather', () => {
  test('is told to the office and to the crew that is to do the work, with hours, limit, value and source', async () => {
    await open();
    await settled('sent');
    expect(got('Weather hold: cable')).toEqual(['crew', 'foreman', 'office']);
    const [message] = mail.messages();
    expect(message?.subject).toBe(`Weather hold: cable (landing), job ${bare.job.number}, ${bare.job.name}`);
    for (const text of [
      `Address: ${bare.site.address}, Alder Mills`,
      'Held from: Tue, Jan 7, 2031, 7:00 AM EST',
      'Held until: Tue, Jan 7, 2031, 12:00 PM EST',
      'Now planned for: Tue, Jan 7, 2031, 8:00 AM EST',
      'Too cold for sealant: 35 °F, under 40 °F. Source of the limit: UFGS 07 92 00 [published]',
      'The local code',
    ])
      expect(message?.text.replace(/\s+/g, ' ')).toContain(text);
  });

  test('is told to all foremen when no crew is set for the work', async () => {
    await bench.database.plannedPhase.update({ where: { phaseId: bare.phase.id }, data: { crewId: null } });
    await open();
    await settled('sent');
    expect(got('Weather hold')).toEqual(['foreman', 'office']);
  });

  test('is not told when it was lifted before anybody heard of it, nor is its lifting', async () => {
    const hold = await bench.change(house.company, async (change) => {
      const row = await change.tx.weatherHold.create({
        data: {
          ...heldRow(),
          reason: 'cold',
          tellings: 1,
          liftedAt: change.now,
        },
      });
      await tellHolds(change, [{ id: row.id, startsAt: row.startsAt, telling: 1 }]);
      return row;
    });
    await workedOff();
    await lift(hold);
    await settled('sent');
    expect(await deliveries()).toEqual([]);
  });

  test('is told by its newest telling only', async () => {
    await bench.change(house.company, async (change) => {
      const row = await change.tx.weatherHold.create({
        data: {
          ...heldRow(),
          endsAt: at('2031-01-07T20:00:00Z'),
          reason: 'cold',
          tellings: 2,
        },
      });
      for (const telling of [1, 2])
        await tellHolds(change, [{ id: row.id, startsAt: row.startsAt, telling }]);
    });
    await settled('sent');
    expect(got('Weather hold moved')).toEqual(['crew', 'foreman', 'office']);
    expect(got('Weather hold:')).toEqual([]);
  });

  test('waits for the end of quiet hours unless it begins within twelve hours', async () => {
    bench.setClock('2031-01-06T03:00:00Z');
    await bench.database.person.updateMany({
      where: { companyId: house.company.id },
      data: { quietFrom: '20:00', quietTo: '06:00' },
    });
    await open();
    await workedOff();
    expect((await deliveries()).map(({ state, notBefore }) => [state, notBefore])).toEqual(
      Array.from({ length: 3 }, () => ['claimed', at('2031-01-06T11:00:00Z')]),
    );
    await open({ startsAt: at('2031-01-06T12:00:00Z'), endsAt: at('2031-01-06T14:00:00Z') });
    await until('the near one is sent', () => got('Weather hold').length === 3);
  });

  test('that was lifted while its notice waited is told to nobody, and neither is the lifting', async () => {
    bench.setClock('2031-01-06T03:00:00Z');
    await bench.database.person.updateMany({
      where: { companyId: house.company.id },
      data: { quietFrom: '20:00', quietTo: '06:00' },
    });
    const hold = await open();
    await workedOff();
    await lift(hold);
    await workedOff();
    bench.setClock('2031-01-06T11:30:00Z');
    await bench.sweep.run();
    await settled('failed');
    expect(new Set((await deliveries()).map(({ error }) => error))).toEqual(
      new Set(['not sent: the hold is lifted or over', 'not sent: the hold it lifts was never told']),
    );
    expect(got('Weather hold')).toEqual([]);
  });
});

describe('the lifting of a hold', () => {
  test('is told to those who were told of it, with the reason', async () => {
    const hold = await open();
    await settled('sent');
    await lift(hold);
    await settled('sent');
    expect(got('Weather hold lifted')).toEqual(['crew', 'foreman', 'office']);
    const message = mail.messages().find(({ subject }) => subject.startsWith('Weather hold lifted'));
    expect(message?.text).toContain('The forecast no longer breaks the limit.');
  });

  test('is not told once its hours are over', async () => {
    const hold = await open();
    await settled('sent');
    bench.setClock('2031-01-07T18:00:00Z');
    await lift(hold);
    await settled('sent');
    expect(got('Weather hold lifted')).toEqual([]);
  });
});

describe('a hold that a person calls for a whole site', () => {
  test('is told to the crews whose work of the next 72 hours it meets, but not to the person', async () => {
    const far = await addPhase(bench.database, {
      companyId: house.company.id,
      jobId: bare.job.id,
      key: 'seal',
      name: 'sealing',
    });
    await planPhase(bench.database, far, '2031-01-20T13:00:00Z', '2031-01-20T17:00:00Z');
    const caller = house.people.foreman.id;
    await bench.change(house.company, async (change) => {
      const hold = await change.tx.weatherHold.create({
        data: {
          companyId: house.company.id,
          siteId: bare.site.id,
          cause: 'called',
          startsAt: change.now,
          reason: 'ice on the steps',
          calledById: caller,
          tellings: 1,
        },
      });
      await change.later('weather-hold-soon', { holds: [{ id: hold.id, telling: 1 }], by: caller });
    });
    await settled('sent');
    expect(got('Weather hold: the site')).toEqual(['crew', 'office']);
    const text = mail.messages()[0]?.text.replace(/\s+/g, ' ');
    expect(text).toContain('Held until: it is lifted');
    expect(text).toContain('ice on the steps');
    expect(text).toContain('Work affected: cable (landing)');
    expect(text).not.toContain('sealing');
  });
});
