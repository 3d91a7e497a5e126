import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD, type TestCompany } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';

const SIGN_IN = 'mutation($input: SignInInput!) { signIn(input: $input) { person { name role } } }';

describe('signing in', () => {
  let service: TestService;
  let one: TestCompany;

  beforeAll(async () => {
    service = await startService();
    one = await makeCompany(service.database);
  });
  afterAll(() => service.stop());

  const signInResponse = (email: string, password: string) =>
    fetch(`${service.url}/graphql`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ query: SIGN_IN, variables: { input: { email, password } } }),
    });

  it('sets an opaque cookie that scripts cannot read and other sites cannot send', async () => {
    const response = await signInResponse(one.people.office.email, TEST_PASSWORD);
    const cookie = response.headers.get('set-cookie') ?? '';
    // RFC 6265bis: the __Host- prefix asks for Secure, Path=/ and no Domain.
    expect(cookie).toMatch(/^__Host-flagway=[\w-]{43};/);
    expect(cookie).toMatch(/; HttpOnly/);
    expect(cookie).toMatch(/; Secure/);
    expect(cookie).toMatch(/; SameSite=Strict/);
    expect(cookie).toMatch(/; Path=\//);
    expect(cookie).not.toMatch(/Domain/i);
    expect(await response.json()).toEqual({
      data: { signIn: { person: { name: one.people.office.name, role: 'office' } } },
    });
  });

  it('keeps only a hash of the token and of the password', async () => {
    const client = await service.signIn(one.people.foreman.email, TEST_PASSWORD);
    const token = client.cookie?.split('=')[1] ?? '';
    const sessions = await service.database.session.findMany();
    expect(JSON.stringify(sessions)).not.toContain(token);
    // RFC 9106 names argon2id as the form for passwords; OWASP asks for at least 19 MiB and two passes.
    expect(one.people.foreman.passwordHash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
  });

  it('does not tell a wrong password from an unknown address', async () => {
    const wrong = await (await signInResponse(one.people.office.email, 'not it')).json();
    const unknown = await (await signInResponse('nobody@example.test', TEST_PASSWORD)).json();
    expect(wrong).toEqual(unknown);
    expect(wrong).toMatchObject({ errors: [{ extensions: { code: 'not-signed-in' } }] });
  });

  it('knows who is signed in, and nobody without a cookie', async () => {
    const client = await service.signIn(one.people.viewer.email, TEST_PASSWORD);
    expect(await client.data('{ me { role } }')).toEqual({ me: { role: 'viewer' } });
    expect(await service.anonymous().data('{ me { role } }')).toEqual({ me: null });
  });

  it('ends a session at once, even for a copy of its cookie', async () => {
    const client = await service.signIn(one.people.office.email, TEST_PASSWORD);
    const copy = new ApiClient(service.url, client.cookie);
    expect(await client.data('mutation { signOut }')).toEqual({ signOut: true });
    expect(await copy.data('{ me { role } }')).toEqual({ me: null });
    expect((await copy.ask('{ company { id } }')).errors?.[0]?.extensions?.code).toBe('not-signed-in');
  });

  it('ends a session when its time is over or its person is put away', async () => {
    const client = await service.signIn(one.people.crew.email, TEST_PASSWORD);
    await service.database.person.update({ where: { id: one.people.crew.id }, data: { active: false } });
    expect(await client.data('{ me { role } }')).toEqual({ me: null });
    await service.database.person.update({ where: { id: one.people.crew.id }, data: { active: true } });
    expect(await client.data('{ me { role } }')).toEqual({ me: { role: 'crew' } });
    service.setClock('2031-03-01T14:00:00Z');
    expect(await client.data('{ me { role } }')).toEqual({ me: null });
    service.setClock('2031-01-06T14:00:00Z');
  });

  it('lists the people of its own company only', async () => {
    const two = await makeCompany(service.database, 'Second');
    const client = await service.signIn(two.people.office.email, TEST_PASSWORD);
    const { people } = await client.data<{ people: { id: string }[] }>('{ people { id } }');
    expect(people.map(({ id }) => id).sort()).toEqual(
      Object.values(two.people)
        .map(({ id }) => id)
        .sort(),
    );
  });

  it('signs in by a button only for the demo', async () => {
    const mutation = 'mutation($id: ID!) { signInToDemo(personId: $id) { person { id } } }';
    expect(await service.anonymous().data('{ demoPeople { id } }')).toEqual({ demoPeople: [] });
    const refused = await service.anonymous().ask(mutation, { id: one.people.office.id });
    expect(refused.errors?.[0]?.extensions?.code).toBe('not-signed-in');
    const demo = await makeCompany(service.database, 'Demo');
    await service.database.company.update({ where: { id: demo.company.id }, data: { isDemo: true } });
    const allowed = await service.anonymous().data(mutation, { id: demo.people.foreman.id });
    expect(allowed).toEqual({ signInToDemo: { person: { id: demo.people.foreman.id } } });
  });
});
