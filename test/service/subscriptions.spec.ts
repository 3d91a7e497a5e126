import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type Client, createClient } from 'graphql-ws';
import WebSocket from 'ws';
import type { ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD, type TestCompany } from '../support/company.js';
import { HintBus } from '../../src/platform/hints/hint-bus.js';
import { startService, type TestService } from '../support/service.js';

const CREW = {
  name: 'Diggers',
  trades: ['labour'],
  size: 2,
  zone: 'America/New_York',
  week: [{ day: 'mon', hours: [{ from: '08:00', to: '16:00' }] }],
};

describe('the subscription "changed"', () => {
  let service: TestService;
  let mine: TestCompany;
  let office: ApiClient;

  beforeAll(async () => {
    service = await startService();
    mine = await makeCompany(service.database);
    office = await service.signIn(mine.people.office.email, TEST_PASSWORD);
  });
  afterAll(() => service.stop());

  const connect = (cookie: string | undefined, origin?: string): Client =>
    createClient({
      url: service.url.replace('http', 'ws') + '/graphql',
      webSocketImpl: class extends WebSocket {
        constructor(address: string, protocols: string[]) {
          super(address, protocols, {
            headers: { ...(cookie ? { cookie } : {}), ...(origin ? { origin } : {}) },
          });
        }
      },
      retryAttempts: 0,
    });

  const listen = (client: Client) =>
    client.iterate<{ changed: { changeNumber: string; jobIds: string[] } }>({
      query: 'subscription { changed { changeNumber jobIds } }',
    });

  it('tells a company of its own changes, with a number to ask from', async () => {
    const client = connect(office.cookie);
    const hints = listen(client);
    const first = hints.next();
    // The stream is open once the bus knows it; a hint before that is nobody's loss.
    while (listeners() === 0) await new Promise((resolve) => setTimeout(resolve, 10));
    await office.change('createCrew', CREW);
    const { value } = await first;
    const changeNumber = value?.data?.changed.changeNumber ?? '';
    expect(Number(changeNumber)).toBeGreaterThan(0);
    const since = await office.data<{ changesSince: { action: string }[] }>(
      'query($n: String!) { changesSince(changeNumber: $n) { action } }',
      {
        n: String(Number(changeNumber) - 1),
      },
    );
    expect(since.changesSince.map(({ action }) => action)).toContain('crew added');
    await hints.return?.();
    await client.dispose();
  });

  it('stops listening at once when the reader leaves', async () => {
    const client = connect(office.cookie);
    const hints = listen(client);
    void hints.next();
    while (listeners() === 0) await new Promise((resolve) => setTimeout(resolve, 10));
    await hints.return?.();
    await client.dispose();
    while (listeners() > 0) await new Promise((resolve) => setTimeout(resolve, 10));
    expect(listeners()).toBe(0);
  });

  it('closes a connection without a session with the protocol’s own code', async () => {
    // graphql-transport-ws: 4403 Forbidden.
    await expect(listen(connect(undefined)).next()).rejects.toMatchObject({ code: 4403 });
    await expect(listen(connect('__Host-flagway=made-up')).next()).rejects.toMatchObject({ code: 4403 });
  });

  it('does not open for a page of another origin', async () => {
    await expect(listen(connect(office.cookie, 'https://elsewhere.example')).next()).rejects.toBeDefined();
  });

  /** The streams are the bus's own affair; a test looks at them all the same to see that none is left open. */
  const listeners = (): number => {
    const bus: unknown = service.app.get(HintBus);
    return (bus as { streams: Set<unknown> }).streams.size;
  };
});
