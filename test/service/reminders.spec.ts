import { afterAll, beforeAll, beforeEach, describe, expect, test } from '@jest/globals';
import type { Inspection, Reminder } from '../../src/generated/prisma/client.js';
import { ReminderFirer } from '../../src/reminders/reminder-firer.js';
import { type BareJob, makeBareJob, planPhase } from '../support/bare-job.js';
import { makeCompany, type TestCompany } from '../support/company.js';
import { startMailServer, type TestMailServer } from '../support/mail-server.js';
import { until } from '../support/until.js';
import { workerBench, type WorkerBench } from '../support/worker.js';

const NOW = '2031-01-06T14:00:00Z';

let mail: TestMailServer;
let bench: WorkerBench;
let stopWorker: () => Promise<void>;
let house: TestCompany;
let bare: BareJob;

beforeAll(async () => {
  mail = await startMailServer();
  bench = await workerBench({ mailUrl: mail.url });
  stopWorker = await bench.worker.start();
});

beforeEach(async () => {
  bench.setClock(NOW);
  mail.clear();
  house = await makeCompany(bench.database);
  bare = await makeBareJob(bench.database, house.company.id);
});

afterAll(async () => {
  await stopWorker();
  await bench.stop();
  await mail.stop();
});

/** A change after which the reminders follow from the rows. */
const settle = (work: () => Promise<unknown> = () => Promise.resolve()) => bench.change(house.company, work);

/** The mails to people of this test's company; the clock lets reminders of the others fire as well. */
const mails = () => mail.messages().filter(({ to }) => domain(to) === domain(house.people.office.email));
const domain = (address: string): string => address.slice(address.indexOf('.') + 1);

const reminders = (): Promise<Reminder[]> =>
  bench.database.reminder.findMany({ where: { companyId: house.company.id }, orderBy: { id: 'asc' } });

const one = async (): Promise<Reminder> => {
  const [reminder, ...others] = await reminders();
  if (!reminder || others.length > 0)
    throw new Error(`Not one reminder but ${others.length + (reminder ? 1 : 0)}`);
  return reminder;
};

/** An inspection booked from 9 to 12 in New York on the day. */
const book = (day: string): Promise<Inspection> =>
  bench.database.inspection.upsert({
    where: { jobId_key_attempt: { jobId: bare.job.id, key: 'footing', attempt: 1 } },
    update: visit(day),
    create: {
      companyId: house.company.id,
      jobId: bare.job.id,
      phaseId: bare.phase.id,
      key: 'footing',
      title: 'Footing',
      state: 'booked',
      ...visit(day),
    },
  });

const visit = (day: string) => ({
  visitFrom: new Date(`${day}T09:00:00-05:00`),
  visitTo: new Date(`${day}T12:00:00-05:00`),
});

const allDelivered = () =>
  until('every delivery is sent', async () => {
    const where = { companyId: house.company.id };
    const [all, sent] = [
      await bench.database.delivery.count({ where }),
      await bench.database.delivery.count({ where: { ...where, state: 'sent' } }),
    ];
    return all > 0 && all === sent;
  });

const untilState = (state: Reminder['state']) =>
  until(`the reminder is ${state}`, async () => (await one()).state === state);

describe('reminders', () => {
  test('follow from the rows in the transaction of the change', async () => {
    await settle(() => book('2031-01-08'));
    expect(await one()).toMatchObject({
      kind: 'visit-today',
      jobId: bare.job.id,
      state: 'pending',
      generation: 1,
      dueAt: new Date('2031-01-08T06:00:00-05:00'),
      usefulUntil: new Date('2031-01-08T12:00:00-05:00'),
    });
  });

  test('are not written when the change is rolled back', async () => {
    await expect(
      bench.change(house.company, async ({ tx }) => {
        await tx.inspection.create({
          data: {
            companyId: house.company.id,
            jobId: bare.job.id,
            phaseId: bare.phase.id,
            key: 'footing',
            title: 'Footing',
            state: 'booked',
            ...visit('2031-01-08'),
          },
        });
        throw new Error('rolled back');
      }),
    ).rejects.toThrow('rolled back');
    expect(await reminders()).toEqual([]);
  });

  test('stay as they are when a change does not touch what they follow from', async () => {
    await settle(() => book('2031-01-08'));
    const before = await one();
    await settle();
    expect(await one()).toEqual(before);
  });

  test('are none for jobs that are done or cancelled, and are cancelled when the job is', async () => {
    await settle(() => book('2031-01-08'));
    await settle(() =>
      bench.database.job.update({ where: { id: bare.job.id }, data: { state: 'cancelled' } }),
    );
    expect((await one()).state).toBe('cancelled');
  });

  test('of one company do not follow from the rows of another', async () => {
    await settle(() => book('2031-01-08'));
    const other = await makeCompany(bench.database);
    await bench.change(other.company, () => Promise.resolve());
    expect(await bench.database.reminder.count({ where: { companyId: other.company.id } })).toBe(0);
    expect((await one()).state).toBe('pending');
  });
});

describe('a reminder that falls due', () => {
  test('goes to office and foremen as a notice, once', async () => {
    await settle(() => book('2031-01-08'));
    bench.setClock('2031-01-08T11:00:00Z');
    await untilState('sent');
    await allDelivered();
    await settle();
    await allDelivered();
    expect(mails()).toHaveLength(2);
    expect(mails()[0]?.subject).toBe(
      `Inspector comes today: Footing, job ${bare.job.number}, ${bare.job.name}`,
    );
    expect(mails()[0]?.text).toContain('From: Wed, Jan 8, 2031, 9:00 AM EST');
    expect(mails()[0]?.text).toContain(`http://flagway.example.test/jobs/${bare.job.number}`);
  });

  test('goes to the foremen of the crew that works on the phase, not to others', async () => {
    const crew = await bench.database.crew.create({
      data: {
        companyId: house.company.id,
        name: 'masons',
        trades: ['mason'],
        size: 3,
        zone: 'America/New_York',
        week: {},
      },
    });
    const lead = await bench.database.person.create({
      data: {
        companyId: house.company.id,
        email: house.people.foreman.email.replace('foreman', 'lead'),
        name: 'lead',
        role: 'foreman',
        passwordHash: 'none',
        zone: 'America/New_York',
      },
    });
    await bench.database.crewMember.create({
      data: { companyId: house.company.id, crewId: crew.id, personId: lead.id, lead: true },
    });
    await settle(async () => {
      await planPhase(bench.database, bare.phase, '2031-01-08T13:00:00Z', '2031-01-08T21:00:00Z', crew.id);
      await bench.database.holdPoint.create({
        data: {
          companyId: house.company.id,
          jobId: bare.job.id,
          phaseId: bare.phase.id,
          key: 'received',
          kind: 'reading',
          gate: 'start',
          title: 'Reading as received',
          items: [],
          waivable: false,
          heatingSetId: bare.heatingSet.id,
          readingStage: 'received',
        },
      });
    });
    bench.setClock('2031-01-08T12:00:00Z');
    await untilState('sent');
    await allDelivered();
    expect(mails().map(({ to }) => to)).toEqual([lead.email]);
  });

  test('after the clock jumped past its use is marked too late and sent to nobody', async () => {
    await settle(() => book('2031-01-08'));
    bench.setClock('2031-01-08T18:00:00Z');
    await untilState('tooLate');
    await settle();
    expect(await one()).toMatchObject({ state: 'tooLate' });
    expect(mails()).toEqual([]);
    expect(await bench.database.notice.count({ where: { companyId: house.company.id } })).toBe(0);
  });

  test('late but still of use is sent', async () => {
    await settle(() => book('2031-01-08'));
    bench.setClock('2031-01-08T16:30:00Z');
    await untilState('sent');
    await mail.waitFor(({ to }) => to === house.people.office.email);
    expect((await one()).state).toBe('sent');
  });

  test('at once, because its time is past when it is first wanted, is sent right away', async () => {
    await settle(() => book('2031-01-06'));
    await untilState('sent');
    await mail.waitFor(({ to }) => to === house.people.office.email);
    expect((await one()).dueAt).toEqual(new Date('2031-01-06T06:00:00-05:00'));
  });
});

describe('a reminder that moves', () => {
  test('fires at the new time and not at the old', async () => {
    await settle(() => book('2031-01-08'));
    await settle(() => book('2031-01-10'));
    expect(await one()).toMatchObject({
      state: 'pending',
      generation: 2,
      dueAt: new Date('2031-01-10T06:00:00-05:00'),
    });
    bench.setClock('2031-01-08T12:00:00Z');
    expect(await bench.relay.run()).toBe(0);
    bench.setClock('2031-01-10T12:00:00Z');
    await untilState('sent');
    await allDelivered();
    expect(mails()).toHaveLength(2);
  });

  test('makes an entry that is already in the queue outdated', async () => {
    await settle(() => book('2031-01-08'));
    const before = await one();
    await settle(() => book('2031-01-10'));
    bench.setClock('2031-01-08T12:00:00Z');
    const firer = bench.app.get(ReminderFirer);
    expect(await firer.fire(before.id, before.generation)).toEqual([]);
    expect(await firer.fire(before.id, before.generation + 1)).toEqual([]);
    expect((await one()).state).toBe('pending');
    expect(await bench.database.notice.count({ where: { companyId: house.company.id } })).toBe(0);
  });

  test('to later after it was sent fires again; to earlier it does not', async () => {
    await settle(() => book('2031-01-08'));
    bench.setClock('2031-01-08T12:00:00Z');
    await untilState('sent');
    await settle(() => book('2031-01-07'));
    expect((await one()).state).toBe('sent');
    await settle(() => book('2031-01-10'));
    expect(await one()).toMatchObject({ state: 'pending', generation: 2, queuedAt: null });
    bench.setClock('2031-01-10T12:00:00Z');
    await untilState('sent');
    await allDelivered();
    expect(mails()).toHaveLength(4);
    expect(await bench.database.notice.count({ where: { companyId: house.company.id } })).toBe(2);
  });
});

describe('a reminder that is no longer wanted', () => {
  test('is cancelled and never fires, and fires when it is wanted again', async () => {
    const booked = await book('2031-01-08');
    await settle();
    await settle(() =>
      bench.database.inspection.update({ where: { id: booked.id }, data: { state: 'passed' } }),
    );
    expect((await one()).state).toBe('cancelled');
    bench.setClock('2031-01-08T12:00:00Z');
    expect(await bench.relay.run()).toBe(0);
    await settle(() =>
      bench.database.inspection.update({ where: { id: booked.id }, data: { state: 'booked' } }),
    );
    await untilState('sent');
    expect((await one()).generation).toBe(2);
  });

  test('while its notice waits for the end of quiet hours is not sent', async () => {
    for (const { id } of [house.people.office, house.people.foreman]) {
      await bench.database.person.update({ where: { id }, data: { quietFrom: '20:00', quietTo: '07:00' } });
    }
    const booked = await book('2031-01-08');
    await settle();
    bench.setClock('2031-01-08T11:00:00Z');
    await untilState('sent');
    await until(
      'both copies wait',
      async () => (await bench.database.delivery.count({ where: { companyId: house.company.id } })) === 2,
    );
    await settle(() =>
      bench.database.inspection.update({ where: { id: booked.id }, data: { state: 'passed' } }),
    );
    bench.setClock('2031-01-08T12:00:00Z');
    const rows = () => bench.database.delivery.findMany({ where: { companyId: house.company.id } });
    await until('both were looked at', async () => (await rows()).every(({ state }) => state === 'failed'));
    expect((await rows()).map(({ error }) => error)).toEqual([
      'not sent: no longer needed',
      'not sent: no longer needed',
    ]);
    expect(mails()).toEqual([]);
  });
});
