import { describe, expect, it } from '@jest/globals';
import { Redis } from 'ioredis';
import { createTransport } from 'nodemailer';
import pg from 'pg';
import { freshDatabase } from '../../support/fresh-database.js';
import { startMailServer } from '../../support/mail-server.js';
import { startRedis } from '../../support/redis.js';

describe('a fresh database', () => {
  it('is migrated, is a suite’s own and is gone when dropped', async () => {
    const [one, two] = await Promise.all([freshDatabase(), freshDatabase()]);
    const client = new pg.Client({ connectionString: one.url });
    await client.connect();
    await client.query(`insert into "Company" (id, name, zone) values (gen_random_uuid(), 'A', 'UTC')`);
    await client.end();
    const other = new pg.Client({ connectionString: two.url });
    await other.connect();
    expect((await other.query('select * from "Company"')).rows).toEqual([]);
    await other.end();
    await Promise.all([one.drop(), two.drop()]);
    await expect(new pg.Client({ connectionString: one.url }).connect()).rejects.toThrow(/does not exist/);
  });
});

describe('a Redis of the suite', () => {
  it('evicts nothing, and keeps what it was told when it is killed', async () => {
    const redis = await startRedis();
    try {
      const before = new Redis(redis.url);
      expect(await before.config('GET', 'maxmemory-policy')).toEqual(['maxmemory-policy', 'noeviction']);
      await before.set('told', 'once');
      before.on('error', () => undefined);
      before.disconnect();
      await redis.kill();
      await redis.start();
      const after = new Redis(redis.url);
      expect(await after.get('told')).toBe('once');
      after.disconnect();
    } finally {
      await redis.stop();
    }
  });
});

describe('a mail server of the suite', () => {
  it('keeps what it accepts and refuses as often as it is told to', async () => {
    const mail = await startMailServer();
    const transport = createTransport(mail.url);
    const letter = {
      from: 'office@example.test',
      to: 'crew@example.test',
      subject: 'Bring blankets',
      text: 'Six.',
    };
    mail.refuseNext(1);
    await expect(transport.sendMail(letter)).rejects.toThrow(/451/);
    await transport.sendMail({ ...letter, headers: { 'X-Key': 'k1' } });
    const caught = await mail.waitFor(({ to }) => to === 'crew@example.test');
    expect(caught).toMatchObject({ subject: 'Bring blankets', from: 'office@example.test' });
    expect(caught.text.trim()).toBe('Six.');
    expect(caught.header('x-key')).toBe('k1');
    expect(mail.messages()).toHaveLength(1);
    await expect(mail.waitFor(({ to }) => to === 'nobody@example.test', 50)).rejects.toThrow(
      /Bring blankets/,
    );
    transport.close();
    await mail.stop();
  });
});
