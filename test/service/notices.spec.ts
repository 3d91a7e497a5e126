import { createHash } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from '@jest/globals';
import type { Delivery } from '../../src/generated/prisma/client.js';
import { DeliverySender } from '../../src/notices/delivery-sender.js';
import { NO_MAIL_SERVER } from '../../src/notices/mailer.js';
import { MOST_ATTEMPTS } from '../../src/platform/queue/retry-delay.js';
import { type BareJob, makeBareJob } from '../support/bare-job.js';
import { makeCompany, type TestCompany } from '../support/company.js';
import { becomeReady, loseNeed } from '../support/hookup-changes.js';
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
  // The relay hardly ever looks by itself here: what arrives was woken by the change.
  bench = await workerBench({ mailUrl: mail.url, relayMilliseconds: 60_000 });
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

const ready = () => bench.change(house.company, (change) => becomeReady(change, bare.hookup.id));
const withdraw = () => bench.change(house.company, (change) => loseNeed(change, bare.hookup.id));
const deliveries = (): Promise<Delivery[]> =>
  bench.database.delivery.findMany({ where: { companyId: house.company.id }, orderBy: { id: 'asc' } });
const links = () => bench.database.signedLink.findMany({ where: { companyId: house.company.id } });
const undone = () => bench.database.outbox.count({ where: { companyId: house.company.id, doneAt: null } });

/** Waits until the outbox is worked off and every delivery is in one of the states. */
const settled = (...states: Delivery['state'][]) =>
  until(`deliveries are ${states.join(' or ')}`, async () => {
    // The outbox first: a row that is done has its deliveries already.
    if ((await undone()) > 0) return false;
    const rows = await deliveries();
    return rows.length > 0 && rows.every(({ state }) => states.includes(state));
  });

describe('the hookup notice', () => {
  test('names job, circuit, readings, needs and cautions, and links to the hookup', async () => {
    await bench.database.cableReading.create({
      data: {
        companyId: house.company.id,
        heatingSetId: bare.heatingSet.id,
        stage: 'laid',
        areaId: bare.area.id,
        at: new Date('2031-01-05T19:00:00Z'),
        ohms: 34.6,
        megaohms: 950,
        testVolts: 500,
        cableTempF: 38,
        accepted: true,
        finding: {},
      },
    });
    await ready();
    await settled('sent');
    const [message] = mail.messages();
    expect(message?.subject).toBe(`Ready for hookup: job ${bare.job.number}, ${bare.job.name}`);
    for (const text of [
      `Address: ${bare.site.address}, Alder Mills`,
      'Heating set: set 1',
      'Circuit: 1650 W, 240 V, 6.9 A',
      // 1650 W / 240 V = 6.875 A; 125 % of it is 8.6 A (NEC 426.4, from memory); the smallest standard breaker is 15 A.
      'Breaker: 15 A at least for a continuous load of 8.6 A',
      'after laying, landing: 34.6 Ω, 950 MΩ at 500 V, cable at 38 °F: within limits',
      'Cold lead is through the wall',
      'Cold lead has 12 in free',
      'Both leads are labelled',
      'licensed electrician under permit',
      'de-energise, lock, verify',
      'not shock protection for people',
      "Energise only after the set's stated cure",
    ]) {
      expect(message?.text).toContain(text);
    }
    const [address = '', token = ''] =
      /http:\/\/flagway\.example\.test\/links\/([\w-]{43})/.exec(message?.text ?? '') ?? [];
    expect(message?.html).toContain(`href="${address}"`);
    // The link is the recipient's own, to the sheet of this job, and its token is kept nowhere.
    expect(await links()).toEqual([
      expect.objectContaining({
        jobId: bare.job.id,
        purpose: 'hookup',
        personId: house.people.electrician.id,
        recipient: house.people.electrician.name,
        tokenHash: createHash('sha256').update(token).digest('hex'),
        expiresAt: new Date('2031-03-07T14:00:00Z'),
      }),
    ]);
    expect(JSON.stringify(await bench.database.notice.findMany())).not.toContain(token);
    expect(message?.html).toContain('shock protection');
  });

  test('leaves no link behind of a message that the server refused', async () => {
    mail.refuseNext(1);
    await ready();
    await until('the message was refused once', async () =>
      (await deliveries()).some(({ attempts }) => attempts === 1),
    );
    expect(await links()).toEqual([]);
    await bench.database.delivery.updateMany({
      where: { companyId: house.company.id },
      data: { state: 'failed' },
    });
  });

  test('goes to the electrician of the hookup when one is set', async () => {
    const other = await bench.database.person.create({
      data: {
        companyId: house.company.id,
        email: `second.${bare.job.id}@example.test`,
        name: 'second electrician',
        role: 'electrician',
        passwordHash: 'none',
        zone: 'America/Chicago',
      },
    });
    await bench.database.hookup.update({ where: { id: bare.hookup.id }, data: { electricianId: other.id } });
    await ready();
    await settled('sent');
    expect(mail.messages().map(({ to }) => to)).toEqual([other.email]);
  });

  test('goes to all electricians of the company, and of no other, when none is set', async () => {
    await makeCompany(bench.database);
    await bench.database.person.create({
      data: {
        companyId: house.company.id,
        email: `third.${bare.job.id}@example.test`,
        name: 'third electrician',
        role: 'electrician',
        passwordHash: 'none',
        zone: 'America/New_York',
      },
    });
    await ready();
    await settled('sent');
    expect(
      mail
        .messages()
        .map(({ to }) => to)
        .sort(),
    ).toEqual([house.people.electrician.email, `third.${bare.job.id}@example.test`].sort());
  });

  test('gathers the messages of one job into one thread with ids of their own', async () => {
    await ready();
    await settled('sent');
    await withdraw();
    await settled('sent');
    const [first, second] = mail.messages();
    const thread = `<job.${bare.job.id}@flagway.example.test>`;
    expect(first?.header('references')).toBe(thread);
    expect(second?.header('in-reply-to')).toBe(thread);
    const ids = (await deliveries()).map(({ id }) => `<${id}@flagway.example.test>`);
    expect([first, second].map((message) => message?.header('message-id'))).toEqual(ids);
  });

  test('is asked for twice but told once: the happening has one notice', async () => {
    await bench.change(house.company, async (change) => {
      await becomeReady(change, bare.hookup.id);
      await change.later('hookup-ready', { hookupId: bare.hookup.id, readyCount: 1 });
    });
    await settled('sent');
    expect(mail.messages()).toHaveLength(1);
    expect(await bench.database.notice.count({ where: { companyId: house.company.id } })).toBe(1);
  });

  test('is written and shows that nobody is there to hear it', async () => {
    await bench.database.person.update({
      where: { id: house.people.electrician.id },
      data: { active: false },
    });
    await ready();
    await until('the notice is written', async () => (await undone()) === 0);
    expect(await bench.database.notice.count({ where: { companyId: house.company.id } })).toBe(1);
    expect(await deliveries()).toEqual([]);
  });
});

describe('a withdrawal', () => {
  test('before the notice was sent tells nobody: both show why', async () => {
    await bench.database.person.update({
      where: { id: house.people.electrician.id },
      data: { quietFrom: '08:00', quietTo: '10:00' },
    });
    await ready();
    await until('the notice waits', async () => (await undone()) === 0 && (await deliveries()).length === 1);
    await withdraw();
    await until('the withdrawal is looked at', async () => {
      const rows = await deliveries();
      return rows.length === 2 && rows.some(({ state }) => state === 'failed');
    });
    bench.setClock('2031-01-06T15:00:00Z');
    await bench.relay.run();
    await settled('failed');
    expect((await deliveries()).map(({ error }) => error).sort()).toEqual([
      'not sent: the notice it withdraws was never sent',
      'not sent: the readiness was withdrawn before',
    ]);
    expect(mail.messages()).toEqual([]);
  });

  test('of a hookup that was never announced tells nobody', async () => {
    await withdraw();
    await until('it is looked at', async () => (await undone()) === 0);
    expect(await bench.database.notice.count({ where: { companyId: house.company.id } })).toBe(0);
  });
});

describe('the leave to energise', () => {
  test('goes to electrician and office with its cautions, once', async () => {
    await bench.change(house.company, async (change) => {
      await change.tx.hookup.update({
        where: { id: bare.hookup.id },
        data: { state: 'done', doneAt: change.now, energiseAllowedAt: change.now },
      });
      await change.later('energising-allowed', { hookupId: bare.hookup.id, readyCount: 1 });
    });
    await settled('sent');
    expect(
      mail
        .messages()
        .map(({ to }) => to)
        .sort(),
    ).toEqual([house.people.electrician.email, house.people.office.email].sort());
    expect(mail.messages()[0]?.subject).toContain('May be energised');
    expect(mail.messages()[0]?.text).toContain('not shock protection for people');
  });
});

describe('a leave to energise that moves', () => {
  /** Dates the leave inside a change and asks for its notice at that date, as the service does; null takes it back. */
  const dateLeave = (iso: string | null) =>
    bench.change(house.company, async (change) => {
      const allowedAt = iso === null ? null : new Date(iso);
      await change.tx.hookup.update({
        where: { id: bare.hookup.id },
        data: { state: 'done', doneAt: change.now, energiseAllowedAt: allowedAt },
      });
      if (allowedAt)
        await change.later('energising-allowed', { hookupId: bare.hookup.id, readyCount: 1 }, allowedAt);
    });
  const noticesWritten = () => bench.database.notice.count({ where: { companyId: house.company.id } });
  const dueRowsDone = async () =>
    (await bench.database.outbox.count({
      where: { companyId: house.company.id, doneAt: null, dueAt: { lte: new Date(now) } },
    })) === 0;
  let now = NOW;
  const goTo = async (iso: string): Promise<void> => {
    now = iso;
    bench.setClock(iso);
    await bench.relay.run();
    await until('what is due is done', dueRowsDone);
  };

  test('is told at its last date only, once', async () => {
    await dateLeave('2031-02-03T14:00:00Z');
    await dateLeave('2031-02-05T14:00:00Z');
    await goTo('2031-02-03T14:00:00Z');
    expect(await noticesWritten()).toBe(0);
    await goTo('2031-02-05T14:00:00Z');
    await settled('sent');
    expect(await noticesWritten()).toBe(1);
    expect(mail.messages()).toHaveLength(2);
  });

  test('is not told once it was taken back, and is told when it is given anew', async () => {
    await dateLeave('2031-02-03T14:00:00Z');
    await dateLeave(null);
    await goTo('2031-02-03T14:00:00Z');
    expect(await noticesWritten()).toBe(0);
    await dateLeave('2031-02-03T14:00:00Z');
    await until('what is due is done', dueRowsDone);
    await settled('sent');
    expect(await noticesWritten()).toBe(1);
  });

  test('that was told is withdrawn from those who were told, at once and once', async () => {
    const withdraw = (allowedAt: string) =>
      bench.change(house.company, async (change) => {
        await change.later('energising-withdrawn', { hookupId: bare.hookup.id, allowedAt });
      });
    await withdraw('2031-01-01T14:00:00Z');
    await until('what is due is done', dueRowsDone);
    expect(await noticesWritten()).toBe(0);
    await dateLeave(NOW);
    await settled('sent');
    await dateLeave(null);
    await withdraw(NOW);
    await withdraw(NOW);
    await until('what is due is done', dueRowsDone);
    await settled('sent');
    const withdrawals = mail.messages().filter(({ subject }) => subject.startsWith('Do not energise'));
    expect(withdrawals.map(({ to }) => to).sort()).toEqual(
      [house.people.electrician.email, house.people.office.email].sort(),
    );
  });
});

describe('quiet hours', () => {
  test('hold a notice back until they end in the recipient’s zone', async () => {
    // 14:00 UTC is 4:00 in Honolulu.
    await bench.database.person.update({
      where: { id: house.people.electrician.id },
      data: { zone: 'Pacific/Honolulu', quietFrom: '20:00', quietTo: '06:00' },
    });
    await ready();
    await until('the notice waits', async () => (await undone()) === 0);
    const [waiting] = await deliveries();
    expect(waiting).toMatchObject({
      state: 'claimed',
      attempts: 0,
      notBefore: new Date('2031-01-06T16:00:00Z'),
    });
    bench.setClock('2031-01-06T15:59:00Z');
    expect(await bench.relay.run()).toBe(0);
    bench.setClock('2031-01-06T16:00:00Z');
    expect(await bench.relay.run()).toBe(1);
    await settled('sent');
    expect(mail.messages()).toHaveLength(1);
  });

  test('do not hold back a withdrawal: somebody may be on the way', async () => {
    await ready();
    await settled('sent');
    await bench.database.person.update({
      where: { id: house.people.electrician.id },
      data: { quietFrom: '08:00', quietTo: '12:00' },
    });
    await withdraw();
    await settled('sent');
    expect(mail.messages()).toHaveLength(2);
  });

  test('that began while a notice waited for another reason hold it back as well', async () => {
    await ready();
    await settled('sent');
    const [delivery] = await deliveries();
    await bench.database.delivery.update({
      where: { id: delivery?.id ?? '' },
      data: { state: 'claimed', sentAt: null },
    });
    await bench.database.person.update({
      where: { id: house.people.electrician.id },
      data: { quietFrom: '08:00', quietTo: '12:00' },
    });
    await bench.app.get(DeliverySender).send(delivery?.id ?? '');
    const [again] = await deliveries();
    expect(again).toMatchObject({ state: 'claimed', notBefore: new Date('2031-01-06T17:00:00Z') });
    expect(mail.messages()).toHaveLength(1);
  });
});

describe('a delivery that cannot be made', () => {
  /** A claimed delivery of a notice that nothing has sent yet. */
  async function claimed(): Promise<string> {
    await ready();
    await settled('sent');
    mail.clear();
    const [delivery] = await deliveries();
    await bench.database.delivery.update({
      where: { id: delivery?.id ?? '' },
      data: { state: 'claimed', sentAt: null, attempts: MOST_ATTEMPTS - 1 },
    });
    return delivery?.id ?? '';
  }

  test('fails for good after the last attempt and says what the server answered', async () => {
    const id = await claimed();
    mail.refuseNext(1);
    await bench.app.get(DeliverySender).send(id);
    const [row] = await deliveries();
    expect(row).toMatchObject({ state: 'failed', attempts: MOST_ATTEMPTS });
    expect(row?.error).toContain('Try again later');
  });

  test('is given up when the person is no longer active', async () => {
    const id = await claimed();
    await bench.database.person.update({
      where: { id: house.people.electrician.id },
      data: { active: false },
    });
    await bench.app.get(DeliverySender).send(id);
    expect(await deliveries()).toMatchObject([
      { state: 'failed', error: 'not sent: the person is no longer active' },
    ]);
    expect(mail.messages()).toEqual([]);
  });

  test('is sent by one of two processes that try at once', async () => {
    const id = await claimed();
    const sender = bench.app.get(DeliverySender);
    await Promise.all([sender.send(id), sender.send(id), sender.send(id)]);
    await settled('sent');
    expect(mail.messages()).toHaveLength(1);
  });
});

describe('without a mail server', () => {
  test('notices wait in sight, and go out once one is set', async () => {
    const deaf = await workerBench({});
    const { company } = await makeCompany(deaf.database);
    const { hookup } = await makeBareJob(deaf.database, company.id);
    const stop = await deaf.worker.start();
    await deaf.change(company, (change) => becomeReady(change, hookup.id));
    await until('the delivery is claimed', async () => (await deaf.database.delivery.count()) === 1);
    await until(
      'it was looked at',
      async () => (await deaf.database.outbox.count({ where: { doneAt: null } })) === 0,
    );
    const delivery = await deaf.database.delivery.findFirstOrThrow();
    expect(delivery).toMatchObject({ state: 'claimed', attempts: 0, sentAt: null, error: NO_MAIL_SERVER });
    await deaf.sweep.run();
    expect(await deaf.database.delivery.findFirstOrThrow()).toEqual(delivery);
    await stop();

    const hearing = await workerBench({ mailUrl: mail.url, databaseUrl: deaf.databaseUrl });
    const stopHearing = await hearing.worker.start();
    await mail.waitFor(({ subject }) => subject.startsWith('Ready for hookup'));
    await until(
      'it is recorded',
      async () => (await hearing.database.delivery.findFirstOrThrow()).state === 'sent',
    );
    await stopHearing();
    await hearing.stop();
    await deaf.stop();
    expect(mail.messages()).toHaveLength(1);
  });
});
