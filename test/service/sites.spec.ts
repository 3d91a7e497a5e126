import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD, type TestCompany } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';

const VISITS = ['mon', 'wed', 'fri'].map((day) => ({ day, hours: [{ from: '09:00', to: '15:00' }] }));
const AUTHORITY = {
  name: 'Fen Hollow building office',
  noticeHours: 48,
  visitMinutes: 45,
  zone: 'America/New_York',
  week: VISITS,
  phone: '555-0101',
};
const SITE = {
  address: '4 Birch Row',
  town: 'Fen Hollow',
  zone: 'America/New_York',
  frostDepthInches: 48,
  frostSource: 'town rule of 2024',
};
const REFUSALS = '... on InvalidInput { faults { path message } } ... on NotFound { what }';
const SELECT: Record<string, string> = {
  createAuthority:
    '... on AuthorityChanged { authority { id name noticeHours visitMinutes phone week { day hours { from to } } } }',
  createSite: '... on SiteChanged { site { id frostDepthInches authority { name } revision } }',
  updateSite: '... on SiteChanged { site { id frostDepthInches authority { name } revision } }',
};

interface Outcome {
  __typename: string;
  authority?: { id: string; name: string; phone: string | null; week: { day: string; hours: object[] }[] };
  site?: { id: string; frostDepthInches: number; authority: { name: string } | null; revision: number };
  faults?: { path: string; message: string }[];
  what?: string;
}

describe('sites and authorities', () => {
  let service: TestService;
  let mine: TestCompany;
  let theirs: TestCompany;
  let office: ApiClient;

  beforeAll(async () => {
    service = await startService();
    mine = await makeCompany(service.database);
    theirs = await makeCompany(service.database, 'Tamarack Stone');
    office = await service.signIn(mine.people.office.email, TEST_PASSWORD);
  });
  afterAll(() => service.stop());

  const change = (name: string, input: object) =>
    office.change<Outcome>(name, input as Record<string, unknown>, `${SELECT[name]} ${REFUSALS}`);

  it('adds an authority with its notice and visiting hours, and a site that it inspects', async () => {
    const { authority } = await change('createAuthority', AUTHORITY);
    expect(authority).toMatchObject({
      name: AUTHORITY.name,
      noticeHours: 48,
      visitMinutes: 45,
      phone: '555-0101',
    });
    expect(authority?.week.filter(({ hours }) => hours.length > 0).map(({ day }) => day)).toEqual([
      'mon',
      'wed',
      'fri',
    ]);
    const { site } = await change('createSite', { ...SITE, authorityId: authority?.id });
    expect(site).toMatchObject({ frostDepthInches: 48, authority: { name: AUTHORITY.name }, revision: 1 });
  });

  it('refuses an authority that never visits, and one whose name is taken', async () => {
    const never = await change('createAuthority', { ...AUTHORITY, name: 'Closed', week: [] });
    expect(never.faults?.[0]).toMatchObject({
      path: 'week',
      message: expect.stringContaining('at least one day'),
    });
    const twice = await change('createAuthority', AUTHORITY);
    expect(twice.faults?.[0]).toMatchObject({
      path: 'name',
      message: expect.stringContaining('another name'),
    });
  });

  it('names every fault of a site, each with what to enter', async () => {
    const outcome = await change('createSite', {
      ...SITE,
      zone: 'Nowhere',
      frostDepthInches: 576,
      latitude: 91,
    });
    expect(outcome.faults?.map(({ path }) => path).sort()).toEqual(['frostDepthInches', 'latitude', 'zone']);
    expect(outcome.faults?.map(({ message }) => message).join()).toContain('inches, not feet');
  });

  it('changes what is given and leaves the rest', async () => {
    const made = await change('createSite', SITE);
    const { site } = await change('updateSite', {
      siteId: made.site?.id,
      frostDepthInches: 42,
      frostSource: 'letter of the office',
    });
    expect(site).toMatchObject({ frostDepthInches: 42, revision: 2 });
    const row = await service.database.site.findUnique({ where: { id: site?.id ?? '' } });
    expect(row).toMatchObject({ address: SITE.address, frostSource: 'letter of the office' });
  });

  it('pages through the sites in the order they were entered, each once', async () => {
    const other = await service.signIn(theirs.people.office.email, TEST_PASSWORD);
    const made: string[] = [];
    for (let number = 1; number <= 5; number += 1) {
      const outcome = await other.change<Outcome>(
        'createSite',
        { ...SITE, address: `${number} Slate Lane` },
        SELECT['createSite'],
      );
      made.push(outcome.site?.id ?? '');
    }
    const seen: string[] = [];
    let after: string | null = null;
    let hasNextPage = true;
    while (hasNextPage) {
      const data: {
        sites: { edges: { node: { id: string } }[]; pageInfo: { hasNextPage: boolean; endCursor: string } };
      } = await other.data(
        'query($after: String) { sites(first: 2, after: $after) { edges { node { id } } pageInfo { hasNextPage endCursor } } }',
        { after },
      );
      seen.push(...data.sites.edges.map(({ node }) => node.id));
      ({ hasNextPage, endCursor: after } = data.sites.pageInfo);
    }
    expect(seen).toEqual(made);
  });

  it.each([0, 201, -3])('refuses a page of %d rows', async (first) => {
    const answer = await office.ask('query($first: Int!) { sites(first: $first) { edges { cursor } } }', {
      first,
    });
    expect(answer.errors?.[0]).toMatchObject({
      extensions: { code: 'bad-request' },
      message: expect.stringContaining('1 to 200'),
    });
  });

  it('refuses a cursor that is none of the list', async () => {
    const foreign = Buffer.from('row:17').toString('base64url');
    for (const after of ['nonsense', foreign]) {
      const answer = await office.ask('query($after: String) { sites(after: $after) { edges { cursor } } }', {
        after,
      });
      expect(answer.errors?.[0]).toMatchObject({ extensions: { code: 'bad-request' } });
    }
  });

  it("answers another company's site and authority like missing ones", async () => {
    const where = { companyId: theirs.company.id };
    const site = await service.database.site.findFirstOrThrow({ where });
    const authority = await service.database.authority.create({
      data: { ...where, name: 'Theirs', noticeHours: 1, zone: 'America/New_York', week: {} },
    });
    for (const id of [site.id, '019b0000-0000-7000-8000-000000000000', 'x']) {
      const data = await office.data<{ site: null }>('query($id: ID!) { site(id: $id) { id } }', { id });
      expect(data.site).toBeNull();
      expect(await change('updateSite', { siteId: id, town: 'Elsewhere' })).toMatchObject({
        __typename: 'NotFound',
        what: 'site',
      });
    }
    for (const id of [authority.id, '019b0000-0000-7000-8000-000000000000', 'x']) {
      expect(await change('createSite', { ...SITE, authorityId: id })).toMatchObject({
        __typename: 'NotFound',
        what: 'authority',
      });
    }
    expect(await service.database.site.findUnique({ where: { id: site.id } })).toEqual(site);
  });
});
