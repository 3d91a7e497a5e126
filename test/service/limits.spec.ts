import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';

describe('the endpoint', () => {
  let service: TestService;
  let office: ApiClient;

  beforeAll(async () => {
    service = await startService();
    const { people } = await makeCompany(service.database);
    office = await service.signIn(people.office.email, TEST_PASSWORD);
  });
  afterAll(() => service.stop());

  const post = (body: string, headers: Record<string, string> = {}) =>
    fetch(`${service.url}/graphql`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie: office.cookie ?? '', ...headers },
      body,
    });

  it('refuses a document that is too deep', async () => {
    const deep = `{ jobs { edges { node { ${'site { forecast { id } } phases { job { '.repeat(5)} id ${'} }'.repeat(5)} } } } }`;
    const { errors } = await office.ask(deep);
    expect(errors?.[0]?.message).toMatch(/depth/i);
  });

  it('refuses a document that asks for one field under many names', async () => {
    const wide = `{ ${Array.from({ length: 40 }, (_, i) => `a${i}: company { id }`).join(' ')} }`;
    expect((await office.ask(wide)).errors?.[0]?.message).toMatch(/alias/i);
  });

  it('refuses several documents in one request', async () => {
    const response = await post(JSON.stringify([{ query: '{ me { id } }' }, { query: '{ me { id } }' }]));
    expect(response.status).toBe(400);
    expect(await response.json()).toMatchObject({
      errors: [{ message: expect.stringContaining('one document') }],
    });
  });

  it('refuses a body beyond its bound without reading it all', async () => {
    const response = await post(JSON.stringify({ query: `# ${'x'.repeat(300 * 1024)}\n{ me { id } }` }));
    expect(response.status).toBe(413);
  });

  it('takes no change by GET, which another site could make a browser send', async () => {
    const response = await fetch(
      `${service.url}/graphql?query=${encodeURIComponent('mutation { signOut }')}`,
      {
        headers: { cookie: office.cookie ?? '' },
      },
    );
    expect(response.status).toBeGreaterThanOrEqual(400);
    expect(await office.data('{ me { role } }')).toEqual({ me: { role: 'office' } });
  });

  it('takes no form, which another site could send without asking first', async () => {
    const response = await post('query=mutation{signOut}', {
      'content-type': 'application/x-www-form-urlencoded',
    });
    expect(response.status).toBe(415);
  });

  it('says what is wrong with a document, and keeps its own faults to itself', async () => {
    expect((await office.ask('{ compony { id } }')).errors?.[0]).toMatchObject({
      message: expect.stringContaining('Cannot query field "compony"'),
      extensions: { code: 'bad-request' },
    });
    const { errors } = await office.ask('{ jobs(first: 300) { edges { node { id } } } }');
    expect(errors?.[0]).toMatchObject({
      message: expect.stringContaining('1 to 200'),
      extensions: { code: 'bad-request' },
    });
    expect(
      (await office.ask('{ jobs(after: "bm9uc2Vuc2U") { edges { node { id } } } }')).errors?.[0],
    ).toMatchObject({
      message: expect.stringContaining('endCursor'),
    });
  });

  it('fills in a default that the caller leaves out, however often the document is sent', async () => {
    const paged = 'query($first: Int! = 5) { jobs(first: $first) { edges { node { id } } } }';
    for (let time = 0; time < 3; time += 1) expect(await office.data(paged)).toEqual({ jobs: { edges: [] } });
  });
});
