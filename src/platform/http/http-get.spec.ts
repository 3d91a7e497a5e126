import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { type AnsweringServer, type Reply, startAnswering } from '../../../test/support/answering-server.js';
import { Chance } from '../chance/chance.js';
import { Clock } from '../clock/clock.js';
import { FetchFailure } from './fetch-failure.js';
import { HttpGet, type Validators } from './http-get.js';

class StandingClock extends Clock {
  override now(): Date {
    return new Date('2031-01-06T14:00:00Z');
  }
}

/** The highest there is, so that pauses are the longest. */
class Highest extends Chance {
  asked = 0;
  override next(): number {
    this.asked += 1;
    return 0.999;
  }
}

describe('reading from another server', () => {
  let server: AnsweringServer;
  let chance: Highest;

  beforeAll(async () => {
    server = await startAnswering();
  });
  beforeEach(() => {
    server.asked.length = 0;
    chance = new Highest();
  });
  afterAll(() => server.stop());

  const client = (more: Partial<ConstructorParameters<typeof HttpGet>[0]> = {}) =>
    new HttpGet(
      {
        agent: 'test agent',
        tryMilliseconds: 2000,
        allMilliseconds: 10_000,
        pauseMilliseconds: 2,
        ...more,
      },
      chance,
      new StandingClock(),
    );
  const get = (known?: Validators, from = client(), path = '/a?key=secret') =>
    from.get(new URL(path, server.url), 'application/json', known ?? null);
  /** Answers with these one after the other, and with the last one from then on. */
  const replies = (...all: Reply[]): void => {
    let next = 0;
    server.answer = () => all[Math.min(next++, all.length - 1)] ?? {};
  };
  const failure = async (from = client()): Promise<FetchFailure> => {
    const outcome: unknown = await get(undefined, from).catch((error: unknown) => error);
    if (!(outcome instanceof FetchFailure)) throw new Error('It did not fail');
    return outcome;
  };

  it('says who asks and what form is wanted, and gives body and validators', async () => {
    replies({ body: '{"a":1}', headers: { etag: '"7"', 'last-modified': 'Mon, 06 Jan 2031 13:00:00 GMT' } });
    expect(await get()).toEqual({
      kind: 'changed',
      text: '{"a":1}',
      validators: { etag: '"7"', lastModified: 'Mon, 06 Jan 2031 13:00:00 GMT' },
    });
    expect(server.asked[0]?.headers).toMatchObject({
      'user-agent': 'test agent',
      accept: 'application/json',
    });
    expect(server.asked[0]?.headers).not.toHaveProperty('if-none-match');
  });

  // Conditional requests: RFC 9110, sections 13.1.2 and 13.1.3; the answer 304: section 15.4.5.
  it('asks by the validators it knows, and takes 304 for unchanged', async () => {
    replies({ status: 304 });
    const known = { etag: '"7"', lastModified: 'Mon, 06 Jan 2031 13:00:00 GMT' };
    expect(await get(known)).toEqual({ kind: 'unchanged' });
    expect(server.asked).toHaveLength(1);
    expect(server.asked[0]?.headers).toMatchObject({
      'if-none-match': '"7"',
      'if-modified-since': 'Mon, 06 Jan 2031 13:00:00 GMT',
    });
  });

  it.each([500, 502, 503, 504, 429, 408])('tries again after %p, with a pause by chance', async (status) => {
    replies({ status }, { body: 'there' });
    expect(await get()).toMatchObject({ text: 'there' });
    expect([server.asked.length, chance.asked]).toEqual([2, 1]);
  });

  it.each([400, 401, 403, 404, 410])(
    'does not try again after %p, and hands on what was said',
    async (status) => {
      replies({ status, body: '{"detail":"no such place"}' });
      const found = await failure();
      expect(found).toMatchObject({ status, body: '{"detail":"no such place"}', waitMilliseconds: null });
      expect(server.asked).toHaveLength(1);
    },
  );

  it('gives up after three tries', async () => {
    replies({ status: 500 });
    expect((await failure()).message).toMatch(/^127\.0\.0\.1:\d+ answered 500 \(its own fault\)\.$/);
    expect(server.asked).toHaveLength(3);
  });

  it('waits as long as it is asked to, and leaves a long wait to whoever asks', async () => {
    replies({ status: 429, headers: { 'retry-after': '0' } }, { body: 'there' });
    expect(await get()).toMatchObject({ text: 'there' });
    expect(chance.asked).toBe(0);
    server.asked.length = 0;
    replies({ status: 429, headers: { 'retry-after': '600' } });
    expect(await failure()).toMatchObject({
      status: 429,
      waitMilliseconds: 600_000,
      message: expect.stringMatching(/asked too often/),
    });
    expect(server.asked).toHaveLength(1);
    replies({ status: 503, headers: { 'retry-after': 'Mon, 06 Jan 2031 14:20:00 GMT' } });
    expect(await failure()).toMatchObject({ waitMilliseconds: 1_200_000 });
  });

  it.each(['hang', 'hang-in-body'] as const)(
    'ends a try that takes too long (%s), and tries again',
    async (fault) => {
      replies({ fault, body: 'x'.repeat(100) }, { body: 'there' });
      expect(await get(undefined, client({ tryMilliseconds: 150 }))).toMatchObject({ text: 'there' });
      replies({ fault, body: 'x'.repeat(100) });
      const found = await failure(client({ tryMilliseconds: 60 }));
      expect(found.message).toMatch(/did not answer within 0\.06 s\./);
    },
  );

  it('ends when all tries together take too long', async () => {
    replies({ fault: 'hang' });
    const found = await failure(client({ tryMilliseconds: 5000, allMilliseconds: 100 }));
    expect(found.message).toMatch(/did not answer within 0\.1 s in all\./);
    expect(server.asked).toHaveLength(1);
  });

  it('tries again when the line breaks within the body', async () => {
    replies({ fault: 'break', body: 'x'.repeat(100) }, { body: 'whole' });
    expect(await get()).toMatchObject({ text: 'whole' });
    replies({ fault: 'break', body: 'x'.repeat(100) });
    expect((await failure()).message).toMatch(/could not be reached, or broke off its answer \([A-Z_]+\)/);
  });

  it('stops reading a body that is too large, and does not ask for it again', async () => {
    replies({ body: 'x'.repeat(4 * 1024 * 1024 + 1) });
    expect((await failure()).message).toMatch(/answered with more than 4 MB; it was not read/);
    expect(server.asked).toHaveLength(1);
    replies({ body: 'x'.repeat(4 * 1024 * 1024) });
    expect(await get()).toMatchObject({ kind: 'changed' });
  });

  it('follows redirects on the same server, and asks there in the same way', async () => {
    server.answer = ({ path }) =>
      path === '/b' ? { body: 'moved' } : { status: 301, headers: { location: '/b' } };
    expect(await get()).toMatchObject({ text: 'moved' });
    expect(server.asked[1]?.headers).toMatchObject({ 'user-agent': 'test agent' });
  });

  it('does not run in circles, nor to another server', async () => {
    replies({ status: 302, headers: { location: '/a' } });
    expect((await failure()).message).toMatch(/sends us on more than 3 times\. Check its address/);
    expect(server.asked).toHaveLength(4);
    replies({ status: 302, headers: { location: 'http://localhost:1/elsewhere' } });
    expect((await failure()).message).toMatch(/sends us to another server/);
  });

  it('names a server that is not there, and no secret of its address', async () => {
    const gone = await startAnswering();
    await gone.stop();
    const outcome: unknown = await client()
      .get(new URL('/a?key=secret', gone.url), 'application/json')
      .catch((error: unknown) => error);
    expect(outcome).toMatchObject({ message: expect.stringMatching(/could not be reached.*ECONNREFUSED/) });
    expect(String(outcome)).not.toMatch(/secret/);
  });
});
