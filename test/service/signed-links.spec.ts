import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { makeToken } from '../../src/signed-links/opaque-token.js';
import { MOST_ASKS_A_MINUTE, MOST_BROWSERS } from '../../src/signed-links/purposes.js';
import { MOST_GUESSES_A_MINUTE } from '../../src/signed-links/door/guesses.js';
import { LinkBrowser } from '../support/link-browser.js';
import { RunningJob } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

/*
 * A link for somebody without an account, from being made to its end. The clock is the test's.
 */

const NOW = '2031-01-06T14:00:00Z';
const LATER = (days: number) => new Date(Date.parse(NOW) + days * 86_400_000).toISOString();
const HEAD = '{ hookupSheet { head { recipient jobNumber jobName address askName askEmail companyName } } }';
/** What making a link, or taking one back, answers. */
interface Answered {
  readonly __typename: string;
  readonly code?: string;
  readonly address?: string | null;
  readonly signedLink?: { readonly id: string; readonly state: string };
  readonly faults?: readonly { readonly path: string }[];
}
const MADE =
  '... on SignedLinkMade { address signedLink { id state recipient browsers lastOpenedAt madeBy refusedOpenings } }';

describe('a signed link', () => {
  let service: TestService;
  let job: RunningJob;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    await service.database.linkGuesses.deleteMany();
    job = await RunningJob.make(service);
  });
  afterAll(() => service.stop());

  const browser = (name?: string) => new LinkBrowser(service.url, name);
  const make = async (more: Record<string, unknown> = {}) => {
    const outcome = await job.office.change<Answered>(
      'makeSignedLink',
      { jobId: job.job.id, purpose: 'hookup', recipient: 'Dana Quill', ...more },
      MADE,
    );
    expect(outcome.__typename).toBe('SignedLinkMade');
    return { address: String(outcome.address), id: String(outcome.signedLink?.id) };
  };
  const revoke = (signedLinkId: string, more: object = {}) =>
    job.office.change<Answered>(
      'revokeSignedLink',
      { signedLinkId, ...more },
      '... on SignedLinkChanged { signedLink { id state } }',
    );
  const links = async () => {
    const { job: read } = await job.office.data<{ job: { signedLinks: Record<string, unknown>[] } }>(
      '($id: ID!) { job(id: $id) { signedLinks { id purpose recipient state browsers lastOpenedAt expiresAt revokedAt refusedOpenings madeBy } } }'.replace(
        '(',
        'query(',
      ),
      { id: job.job.id },
    );
    return read.signedLinks;
  };
  const everything = async () => ({
    links: await service.database.signedLink.findMany(),
    sessions: await service.database.linkSession.findMany(),
    journal: await service.database.journalEntry.count(),
    guesses: await service.database.linkGuesses.count(),
  });

  it('is shown to the office once, and kept only as a hash', async () => {
    const key = randomUUID();
    const { address } = await make({ clientKey: key });
    const token = new URL(address).pathname.split('/').at(-1) ?? '';
    expect(token).toHaveLength(43);
    const again = await job.office.change<Record<string, unknown>>(
      'makeSignedLink',
      { clientKey: key, jobId: job.job.id, purpose: 'hookup', recipient: 'Dana Quill' },
      MADE,
    );
    expect(again['address']).toBeNull();
    const stored = JSON.stringify({
      rows: await everything(),
      keys: await service.database.idempotencyKey.findMany(),
      lines: (await service.database.journalEntry.findMany()).map(({ detail }) => detail),
    });
    expect(stored).not.toContain(token);
    expect(await service.database.signedLink.count({ where: { jobId: job.job.id } })).toBe(1);
  });

  it('changes nothing when it is only looked at, as a scanner of mail does, however often', async () => {
    const { address } = await make();
    const before = await everything();
    for (let times = 0; times < 30; times += 1) {
      const scanner = browser('scanner');
      const { status, headers, text } = await scanner.look(address, times % 2 ? 'HEAD' : 'GET');
      expect(status).toBe(200);
      expect(headers.getSetCookie()).toEqual([]);
      if (times === 0) {
        expect(headers.get('referrer-policy')).toBe('no-referrer');
        expect(headers.get('cache-control')).toBe('no-store');
        expect(headers.get('x-robots-tag')).toContain('noindex');
        expect(text).toContain('Open the hookup sheet</button>');
        expect(text).toContain('Dana Quill');
        // Nothing of the job is told before the button.
        expect(text).not.toContain(job.site.address);
      }
    }
    expect(await everything()).toEqual(before);
    expect((await browser().press(address)).status).toBe(303);
  });

  it('opens its page by the button, whose address is without the token', async () => {
    const { address, id } = await make();
    const phone = browser('Phone 7');
    const { status, location, headers } = await phone.press(address);
    expect({ status, location }).toEqual({ status: 303, location: `/sheet/${id}` });
    const [cookie = ''] = headers.getSetCookie();
    // RFC 6265bis: sent by the browser only, over TLS only, to this host only, and with no request of another site's own.
    expect(cookie).toMatch(
      new RegExp(
        `^__Host-flagway-link-${id}=[\\w-]{43}; .*Path=/; Expires=.*2031.*; HttpOnly; Secure; SameSite=Lax$`,
      ),
    );
    expect(headers.get('referrer-policy')).toBe('no-referrer');
    const { data } = await phone.ask(HEAD);
    expect(data).toEqual({
      hookupSheet: {
        head: {
          recipient: 'Dana Quill',
          jobNumber: 101,
          jobName: 'Larch Street',
          address: '4 Larch Street',
          askName: job.people.office.name,
          askEmail: job.people.office.email,
          companyName: job.company.name,
        },
      },
    });
    const [shown] = await links();
    expect(shown).toMatchObject({
      state: 'live',
      browsers: 1,
      lastOpenedAt: NOW.replace('Z', '.000Z'),
      madeBy: job.people.office.name,
    });
    const journal = await service.database.journalEntry.findMany({
      where: { jobId: job.job.id, subjectType: 'signedLink' },
      orderBy: { id: 'asc' },
    });
    expect(journal.map(({ action }) => action)).toEqual(['signed link made', 'signed link opened']);
    expect(journal[1]?.detail).toMatchObject({ byLink: 'Dana Quill', browser: 'Phone 7' });
  });

  it('leads straight to its page where it is open already, and counts nothing anew', async () => {
    const { address, id } = await make();
    const phone = browser();
    await phone.press(address);
    await phone.ask(HEAD);
    for (const answer of [await phone.look(address), await phone.press(address)])
      expect(answer).toMatchObject({ status: 303, location: `/sheet/${id}` });
    expect(await service.database.linkSession.count({ where: { linkId: id } })).toBe(1);
  });

  it('takes a button that was pressed twice for one', async () => {
    const { address, id } = await make();
    const first = browser('Phone 7');
    const second = browser('Phone 7');
    await Promise.all([first.press(address), second.press(address)]);
    expect(await service.database.linkSession.count({ where: { linkId: id } })).toBe(1);
    const answers = [await first.ask(HEAD), await second.ask(HEAD)];
    expect(answers.filter(({ data }) => data !== null)).toHaveLength(1);
  });

  it(`opens in ${MOST_BROWSERS} browsers, also when more knock at once, and shows the office who was refused`, async () => {
    const { address, id } = await make();
    const many = Array.from({ length: 6 }, (_, number) => browser(`Browser ${number}`));
    const answers = await Promise.all(many.map((one) => one.press(address)));
    expect(answers.map(({ status }) => status).sort()).toEqual([303, 303, 303, 403, 403, 403]);
    const refused = answers.find(({ status }) => status === 403);
    expect(refused?.text).toContain('open in other browsers already');
    expect(refused?.text).toContain(job.people.office.email);
    expect(await links()).toEqual([
      expect.objectContaining({ id, browsers: MOST_BROWSERS, refusedOpenings: 3 }),
    ]);
  });

  it('ends at once in the middle of its use when it is taken back', async () => {
    const { address, id } = await make();
    const phone = browser();
    await phone.press(address);
    expect((await phone.ask(HEAD)).data).not.toBeNull();
    expect(await revoke(id)).toMatchObject({ signedLink: { id, state: 'revoked' } });
    const shut = await phone.ask(HEAD);
    expect(shut.data).toBeNull();
    expect(shut.errors?.[0]?.extensions?.code).toBe('not-signed-in');
    expect(shut.errors?.[0]?.message).toContain('ask whoever sent it for a new one');
    for (const answer of [await phone.look(address), await phone.press(address)]) {
      expect(answer.status).toBe(410);
      expect(answer.text).toContain('taken back');
      expect(answer.text).toContain(`Ask ${job.people.office.name}`);
    }
    expect((await phone.look(`/sheet/${id}`)).status).toBe(403);
    expect(await revoke(id)).toMatchObject({ code: 'WrongState' });
  });

  it('runs out on its day, by the clock of the service', async () => {
    const { address, id } = await make({ days: 3 });
    const phone = browser();
    await phone.press(address);
    service.setClock(new Date(Date.parse(LATER(3)) - 1).toISOString());
    expect((await phone.ask(HEAD)).data).not.toBeNull();
    service.setClock(LATER(3));
    expect((await phone.ask(HEAD)).errors?.[0]?.extensions?.code).toBe('not-signed-in');
    const again = await browser().press(address);
    expect(again.status).toBe(410);
    expect(again.text).toContain('run out');
    expect(await links()).toEqual([expect.objectContaining({ id, state: 'expired' })]);
  });

  it('lasts 60 days for a hookup and 120 for an owner, unless told otherwise', async () => {
    await make();
    await make({ purpose: 'ownerWeek' });
    await make({ days: 1 });
    expect((await links()).map(({ expiresAt }) => expiresAt)).toEqual([LATER(1), LATER(120), LATER(60)]);
  });

  it.each([
    [{ recipient: '   ' }, 'recipient'],
    [{ recipient: 'x'.repeat(81) }, 'recipient'],
    [{ days: 0 }, 'days'],
    [{ days: 366 }, 'days'],
  ])('is not made of %j', async (more, path) => {
    const input = { jobId: job.job.id, purpose: 'hookup', recipient: 'Dana Quill', ...more };
    const outcome = await job.office.change<Answered>(
      'makeSignedLink',
      input,
      '... on InvalidInput { faults { path } }',
    );
    expect(outcome.faults).toEqual([{ path }]);
  });

  it('is not made for a job that was given up, nor by anybody but the office', async () => {
    const input = { jobId: job.job.id, purpose: 'hookup', recipient: 'Dana Quill' };
    await expect(job.foreman.change('makeSignedLink', input)).rejects.toThrow('not-allowed');
    await expect(job.electrician.change('makeSignedLink', input)).rejects.toThrow('not-allowed');
    await service.database.job.update({ where: { id: job.job.id }, data: { state: 'cancelled' } });
    expect(await job.office.change('makeSignedLink', input)).toMatchObject({ code: 'WrongState' });
  });

  it('is made and taken back only by its own company', async () => {
    const { id } = await make();
    const other = await RunningJob.make(service);
    expect(await other.office.change('revokeSignedLink', { signedLinkId: id })).toMatchObject({
      code: 'NotFound',
    });
    const input = { jobId: job.job.id, purpose: 'hookup', recipient: 'Dana Quill' };
    expect(await other.office.change('makeSignedLink', input)).toMatchObject({ code: 'NotFound' });
    expect((await links()).map(({ state }) => state)).toEqual(['live']);
  });

  it('that nobody made is answered with what to do, and not without end', async () => {
    const forger = browser();
    const answers = [];
    for (let times = 0; times < MOST_GUESSES_A_MINUTE; times += 1)
      answers.push(await forger.look(`/links/${makeToken()}`));
    expect(new Set(answers.map(({ status }) => status))).toEqual(new Set([404]));
    expect(answers[0]?.text).toContain('Copy the whole of it');
    const slowed = await forger.press(`/links/${makeToken()}`);
    expect(slowed.status).toBe(429);
    expect(slowed.headers.get('retry-after')).toBe('60');
    service.setClock(new Date(Date.parse(NOW) + 60_000).toISOString());
    expect((await forger.look(`/links/${makeToken()}`)).status).toBe(404);
  });

  it('cannot be made of another by changing a letter, nor of no letters', async () => {
    const { address } = await make();
    const changed = address.slice(0, -2) + (address.at(-2) === 'A' ? 'B' : 'A') + address.at(-1);
    for (const forged of [changed, `${address}A`, '/links/x', `/links/${'%00'.repeat(43)}`]) {
      expect((await browser().look(forged)).status).toBe(404);
      expect((await browser().press(forged)).status).toBe(404);
    }
  });

  it('is not opened by the button of another site, nor by a body that is no form', async () => {
    const { address, id } = await make();
    expect((await browser().press(address, { 'sec-fetch-site': 'cross-site' })).status).toBe(403);
    const answer = await browser().fetch('/links', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ token: address.split('/').at(-1) }),
    });
    expect(answer.status).toBe(415);
    expect(await service.database.linkSession.count({ where: { linkId: id } })).toBe(0);
    expect((await browser().press(address, { 'sec-fetch-site': 'same-origin' })).status).toBe(303);
  });

  it('leaves the address of its page useless to everybody else', async () => {
    const { address, id } = await make();
    const phone = browser();
    await phone.press(address);
    const stranger = await browser().look(`/sheet/${id}`);
    expect(stranger.status).toBe(403);
    expect(stranger.text).toContain('open that link, in this browser');
    expect((await browser().ask(HEAD, {}, id)).errors?.[0]?.extensions?.code).toBe('not-signed-in');
    // The cookie of one link is none of another's.
    const second = await make();
    expect((await phone.ask(HEAD, {}, second.id)).errors?.[0]?.extensions?.code).toBe('not-signed-in');
    const stolen = phone.cookieHeader.replace(id, second.id);
    const response = await fetch(`${service.url}/graphql`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie: stolen, 'flagway-link': second.id },
      body: JSON.stringify({ query: HEAD }),
    });
    expect(await response.json()).toMatchObject({ data: null });
  });

  it('counts for nothing where it is not named', async () => {
    const { address } = await make();
    const phone = browser();
    await phone.press(address);
    const response = await fetch(`${service.url}/graphql`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie: phone.cookieHeader },
      body: JSON.stringify({ query: HEAD }),
    });
    expect(await response.json()).toMatchObject({
      errors: [{ extensions: { code: 'not-signed-in' } }],
    });
  });

  it('answers so many questions a minute', async () => {
    const { address } = await make();
    const phone = browser();
    await phone.press(address);
    const codes = [];
    for (let times = 0; times <= MOST_ASKS_A_MINUTE; times += 1)
      codes.push((await phone.ask('{ hookupSheet { __typename } }')).errors?.[0]?.extensions?.code);
    expect(codes.slice(0, -1).filter(Boolean)).toEqual([]);
    expect(codes.at(-1)).toBe('too-many');
    service.setClock(new Date(Date.parse(NOW) + 60_000).toISOString());
    expect((await phone.ask(HEAD)).data).not.toBeNull();
  });

  it('ends with the account of the person it was mailed to', async () => {
    const { address, id } = await make();
    await service.database.signedLink.update({
      where: { id },
      data: { personId: job.people.electrician.id },
    });
    const phone = browser();
    await phone.press(address);
    expect((await phone.ask(HEAD)).data).not.toBeNull();
    await service.database.person.update({
      where: { id: job.people.electrician.id },
      data: { active: false },
    });
    expect((await phone.ask(HEAD)).data).toBeNull();
    expect((await phone.look(address)).status).toBe(410);
  });
});
