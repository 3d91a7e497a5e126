import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { makeOffice, type Office } from '../support/office.js';
import { startService, type TestService } from '../support/service.js';

interface Entry {
  id: string;
  action: string;
  subjectType: string;
  reason: string | null;
  detail: string;
  job: { id: string } | null;
  person: { name: string } | null;
}
interface Page {
  edges: { node: Entry }[];
  pageInfo: { hasNextPage: boolean; endCursor: string };
}

const FIELDS = 'id action subjectType reason detail job { id } person { name }';
const JOURNAL = `query($first: Int, $after: String, $jobId: ID) {
  journal(first: $first, after: $after, jobId: $jobId) { edges { node { ${FIELDS} } } pageInfo { hasNextPage endCursor } }
}`;
const SINCE = `query($n: String!) { changesSince(changeNumber: $n) { ${FIELDS} } }`;

describe('the journal', () => {
  let service: TestService;
  let mine: Office;
  let theirs: Office;
  let jobId: string;

  beforeAll(async () => {
    service = await startService();
    mine = await makeOffice(service);
    theirs = await makeOffice(service, 'Tamarack Stone');
    jobId = await mine.enterJob();
    await theirs.enterJob('Their entry');
    for (const priority of [2, 3, 4]) await mine.client.change('updateJob', { jobId, priority });
    await mine.client.change('cancelJob', { jobId, reason: 'the owner sold the house' });
  });
  afterAll(() => service.stop());

  const journal = async (variables: object): Promise<Page> =>
    (await mine.client.data<{ journal: Page }>(JOURNAL, variables as Record<string, unknown>)).journal;
  const since = async (n: string): Promise<Entry[]> =>
    (await mine.client.data<{ changesSince: Entry[] }>(SINCE, { n })).changesSince;

  it('tells what was done to a job, by whom and why, newest first', async () => {
    const { edges } = await journal({ jobId });
    const own = edges
      .map(({ node }) => node)
      .filter(({ subjectType, action }) => subjectType === 'job' && action !== 'plan moved');
    expect(own.map(({ action }) => action)).toEqual([
      'job cancelled',
      'job changed',
      'job changed',
      'job changed',
      'job entered',
    ]);
    expect(own[0]).toMatchObject({
      reason: 'the owner sold the house',
      job: { id: jobId },
      person: { name: mine.people.office.name },
    });
    expect(JSON.parse(own[1]?.detail ?? '')).toEqual({ priority: 4 });
  });

  it('comes in pages, each entry once', async () => {
    const seen: string[] = [];
    let page = await journal({ first: 2 });
    seen.push(...page.edges.map(({ node }) => node.id));
    while (page.pageInfo.hasNextPage) {
      page = await journal({ first: 2, after: page.pageInfo.endCursor });
      seen.push(...page.edges.map(({ node }) => node.id));
    }
    const all = await service.database.journalEntry.findMany({
      where: { companyId: mine.company.id },
      orderBy: { id: 'desc' },
    });
    expect(seen).toEqual(all.map(({ id }) => String(id)));
  });

  it('gives the changes after a number, oldest first', async () => {
    const all = await since('0');
    expect(all.map(({ id }) => Number(id))).toEqual(
      [...all.map(({ id }) => Number(id))].sort((a, b) => a - b),
    );
    const middle = all[Math.floor(all.length / 2)]?.id ?? '';
    const later = await since(middle);
    expect(later).toEqual(all.slice(Math.floor(all.length / 2) + 1));
    expect(await since(all.at(-1)?.id ?? '')).toEqual([]);
  });

  it("holds no line of another company's, whatever job is asked for", async () => {
    const foreign = await service.database.job.findFirstOrThrow({ where: { companyId: theirs.company.id } });
    for (const id of [foreign.id, '019b0000-0000-7000-8000-000000000000', 'no id']) {
      expect((await journal({ jobId: id })).edges).toEqual([]);
    }
    const own = await service.database.journalEntry.findMany({ where: { companyId: mine.company.id } });
    expect((await since('0')).map(({ id }) => id).sort()).toEqual(own.map(({ id }) => String(id)).sort());
  });

  it.each(['-1', 'abc', '1e9', '99999999999999999999'])('refuses the change number %s', async (n) => {
    const answer = await mine.client.ask(SINCE, { n });
    expect(answer.errors?.[0]).toMatchObject({
      extensions: { code: 'bad-request' },
      message: expect.stringContaining('number of a change'),
    });
  });

  it('refuses a cursor of another list', async () => {
    const after = Buffer.from(`row:${jobId}`).toString('base64url');
    const answer = await mine.client.ask(JOURNAL, { after });
    expect(answer.errors?.[0]?.extensions?.code).toBe('bad-request');
  });

  it('cannot be changed or deleted, not even past the service', async () => {
    const entry = await service.database.journalEntry.findFirstOrThrow({
      where: { companyId: mine.company.id },
    });
    await expect(
      service.database.journalEntry.update({ where: { id: entry.id }, data: { action: 'nothing' } }),
    ).rejects.toThrow();
    await expect(service.database.journalEntry.delete({ where: { id: entry.id } })).rejects.toThrow();
  });
});
